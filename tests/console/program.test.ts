import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { machineText } from './events.ts';
import { tellwire } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'tellwire-console-'));
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const machine = file('mill.yaml', machineText);
const other = file('note.txt', 'something');

describe('exit codes', () => {
  it.each([
    [['--help']],
    [['commission', '--help']],
    [['help', 'bench']],
    [['wiring', '--help']],
    [['troubleshoot', '--help']],
  ])('%j shows what there is and leaves with 0', async (words) => {
    const { code, out, err } = await tellwire(...words);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('Usage: tellwire');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it.each<[readonly string[], RegExp]>([
    [[], /Usage: tellwire/],
    [['comission'], /unknown command 'comission'.*commission/],
    [['wach'], /unknown command 'wach'.*watch/],
    [['--fast'], /unknown option '--fast'/],
    [['commission', '--port'], /argument missing/],
    [['explain'], /missing required argument 'finding'/],
    [['explain', 'kerfuffle'], /There is no finding kerfuffle\.\n {2}Try: One of: break-undetected/],
    [['ports', 'all'], /too many arguments/],
    [
      ['commission', '--operator', 'lines', '--machine', machine],
      /No port was named\.\n {2}Try: .*tellwire ports/,
    ],
    [['commission', '--operator', 'lines', '--port', '/dev/null-0'], /No machine file was named/],
    [
      ['commission', '--operator', 'lines', '--port', 'bench', '--machine', join(folder, 'none.yaml')],
      /none\.yaml cannot be read \(ENOENT\)/,
    ],
    [['commission', '--operator', 'lines', '--port', 'bench', '--stream', 'a.yaml'], /cannot be read/],
    [
      ['commission', '--operator', 'lines', '--port', 'bench', '--checks', 'soak'],
      /soak is no part of a guided session/,
    ],
    [['commission', '--operator', 'lines', '--port', 'bench', '--only', 'w-home'], /--only w-home/],
    [['commission', '--operator', 'lines', '--port', 'bench', '--presses', '0'], /whole number from 1 to 30/],
    [['commission', '--operator', 'lines', '--port', 'bench', '--resume'], /Name its folder with --out/],
    [['commission', '--operator', 'lines', '--port', 'bench', '--fault', 'rust:x-home'], /rust/],
    [['commission', '--operator', 'lines', '--port', 'bench', '--out', folder], /not empty/],
    [
      [
        'commission',
        '--operator',
        'lines',
        '--port',
        '/dev/tty-none',
        '--machine',
        machine,
        '--fault',
        'crossed:a,b',
      ],
      /on the bench only/,
    ],
    [['commission', '--operator', 'mouse', '--port', 'bench'], /screen, lines or json/],
    [['bench', '--serve', 'carrier pigeon'], /Cannot serve on carrier pigeon/],
    [['check'], /Nothing was named to check/],
    [['check', '--new', 'cake'], /cake is no kind of file/],
    [['check', join(folder, 'none.yaml')], /cannot be read/],
    [['replay', folder], /no session\.json/],
    [['report', folder, '--format', 'pdf'], /pdf is not in this version/],
    [['map', folder], /no session\.json/],
  ])('%j is the tool’s failure: 3, the reason on stderr and nothing on stdout', async (words, reason) => {
    const { code, out, err } = await tellwire(...words);
    expect(err).toMatch(reason);
    expect({ code, out }).toEqual({ code: 3, out: '' });
  });

  it('says why a port cannot be opened and leaves with 3', async () => {
    const out = join(folder, 'never');
    const { code, err } = await tellwire(
      'commission',
      '--operator',
      'lines',
      '--port',
      join(folder, 'no-such-port'),
      '--machine',
      machine,
      '--out',
      out,
    );
    expect(code).toBe(3);
    expect(err).toMatch(/no-such-port[\s\S]*Try: /);
  });

  it('names every wrong line of a machine file before it opens anything', async () => {
    const wrong = file(
      'wrong.yaml',
      machineText.replace('axis: X', 'axis: Q').replace('duty: [limit]', 'duty: [limt]'),
    );
    const { code, err } = await tellwire(
      'commission',
      '--operator',
      'json',
      '--port',
      'bench',
      '--machine',
      wrong,
    );
    expect(code).toBe(3);
    expect(err).toMatch(/wrong\.yaml:4:\d+/);
    expect(err).toMatch(/wrong\.yaml:9:\d+/);
  });
});

describe('check', () => {
  it('leaves with 0 for a right file and says what it holds', async () => {
    const { code, out } = await tellwire('check', machine);
    expect({ code, out }).toEqual({ code: 0, out: `${machine} is right: Small mill, 3 inputs, 3 axes.\n` });
  });

  it('doubts a home switch without an axis and leaves with 0: the file can be used as it stands', async () => {
    const doubted = file('doubted.yaml', machineText.replace('axis: X, ', ''));
    const { code, out } = await tellwire('check', doubted);
    expect(code).toBe(0);
    expect(out).toMatch(/is right: Small mill.*\n\nIt can be used as it stands/);
    expect(out).toMatch(/doubted\.yaml:4:3 inputs\.x-home\.axis\n {2}found: {3}duty home, but no axis/);
    expect((await tellwire('check', doubted, '--json')).out).toBe('[]\n');
  });

  it('leaves with 1 for a wrong file and shows all of it at once', async () => {
    const wrong = file(
      'two.yaml',
      machineText.replace('axis: X', 'axis: Q').replace('contact: normally closed', 'contact: sometimes'),
    );
    const { code, out, err } = await tellwire('check', wrong);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out.match(/two\.yaml:4:\d+/g)).toHaveLength(2);
    const asJson = await tellwire('check', wrong, '--json');
    expect(JSON.parse(asJson.out)).toHaveLength(2);
  });

  it('prints a starter that it takes itself, and a schema', async () => {
    const starter = await tellwire('check', '--new', 'machine');
    expect((await tellwire('check', file('starter.yaml', starter.out))).code).toBe(0);
    const { out } = await tellwire('check', '--schema', 'machine');
    expect(JSON.parse(out)).toHaveProperty('properties.inputs');
  });
});

describe('commands that only show', () => {
  it('explains a finding from the catalogue', async () => {
    const { code, out } = await tellwire('explain', 'break-undetected');
    expect(code).toBe(0);
    expect(out).toContain('What to do next:');
    expect(JSON.parse((await tellwire('explain', 'break-undetected', '--json')).out)).toHaveProperty(
      'kind',
      'break-undetected',
    );
  });

  it('lists ports, faults and the bench’s machine', async () => {
    expect((await tellwire('ports')).code).toBe(0);
    expect(Array.isArray(JSON.parse((await tellwire('ports', '--json')).out))).toBe(true);
    const faults = await tellwire('bench', '--faults');
    expect(faults.out).toMatch(/^crossed:/m);
    for (const line of faults.out.split('\n')) expect(line.length).toBeLessThan(80);
    const { out } = await tellwire('bench', '--print-machine');
    expect((await tellwire('check', file('bench.yaml', out))).code).toBe(0);
  });

  it('maps a machine file without any session', async () => {
    const { code, out } = await tellwire('map', '--machine', machine);
    expect(code).toBe(0);
    expect(out).toContain('x-home (left end of the long axis)');
    expect(out).toContain('No session of this machine is under sessions');
  });

  it('writes nothing a terminal would act on, whatever a file is called', async () => {
    const { err } = await tellwire('check', 'a\u001b[2Jb');
    expect(err).toContain('a\\x1b[2Jb');
    expect(readFileSync(other, 'utf8')).toBe('something');
  });
});

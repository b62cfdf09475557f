import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { list } from 'tar';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readDump } from '../report/signals/vcd-grammar.ts';
import { virtualSession } from '../session/virtual-session.ts';
import { tellwire } from './run.ts';

const work = mkdtempSync(join(tmpdir(), 'tellwire-saved-'));
const session = join(work, 'session');
const at = (name: string): string => join(work, name);

beforeAll(async () => {
  await virtualSession({ folder: session, bench: { faults: ['broken-wire:x-home'] } });
}, 60_000);
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe('a saved session', () => {
  it('comes as a value change dump that the grammar of the standard takes', async () => {
    expect((await tellwire('report', session, '--format', 'vcd')).code).toBe(0);
    const dump = readDump(readFileSync(join(session, 'inputs.vcd'), 'utf8'));
    expect(dump.variables.map(({ reference }) => reference)).toContain('level_x_home');
    const changed = new Set(dump.changes.filter(({ time }) => time > 0).map(({ code }) => code));
    expect(changed.size).toBeGreaterThan(10);
  });

  it('tells the same changes as edges and as a dump', async () => {
    const { code } = await tellwire(
      'replay',
      session,
      '--vcd',
      at('a.vcd'),
      '--csv',
      at('edges.csv'),
      '--json',
    );
    expect(code).toBe(1);
    expect(readFileSync(at('a.vcd'), 'utf8')).toBe(readFileSync(join(session, 'inputs.vcd'), 'utf8'));
    const rows = readFileSync(at('edges.csv'), 'utf8')
      .split('\r\n')
      .slice(1, -1)
      .map((row) => row.split(','));
    expect(new Set(rows.map(({ length }) => length))).toEqual(new Set([6]));
    const times = rows.map(([time]) => Number(time));
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    const dump = readDump(readFileSync(at('a.vcd'), 'utf8'));
    const code0 = dump.variables.find(({ reference }) => reference === 'level_y_home')?.code;
    const inDump = dump.changes
      .filter(({ code, time }) => code === code0 && time > 0)
      .map(({ time }) => time);
    const ofInput = rows.filter(([, , , input]) => input === 'y-home');
    const inRows = ofInput
      .filter(([, , , , level], i) => level !== ofInput[i - 1]?.[4])
      .map(([time]) => Math.round(Number(time) * 1000));
    expect(inDump).toEqual(inRows);
  });

  it('has one row a switch in CSV, as many cells in each, and the failed switch failed', async () => {
    await tellwire('report', session, '--format', 'csv');
    const [head = '', ...rows] = readFileSync(join(session, 'report.csv'), 'utf8').trimEnd().split('\r\n');
    const column = head.split(',').indexOf('worst');
    expect(rows.find((row) => row.startsWith('x-home,'))).toContain(',failed,');
    expect(rows).toHaveLength(new Set(rows.map((row) => row.split(',')[0])).size);
    expect(column).toBeGreaterThan(0);
  });

  it.each([
    ['md', /\| x-home/],
    ['html', /^<!doctype html>/],
    ['csv', /^switch,input,duty/],
    ['json', /"proved": \[/],
  ])('has its input map in %s, with when and by what each row was proved', async (format, looks) => {
    const { code, out } = await tellwire('map', session, '--format', format);
    expect({ code, fits: looks.test(out) }).toEqual({ code: 0, fits: true });
    expect(out).toMatch(/2026-01-02[T ]03:0\d/);
    expect(out).toMatch(/repeated|seen three times or more/);
  });

  it('refuses a format that a map has not', async () =>
    expect((await tellwire('map', session, '--format', 'vcd')).code).toBe(3));
});

describe('a session in one file', () => {
  const names = (file: string): readonly string[] => {
    const found: string[] = [];
    list({ file, sync: true, onReadEntry: ({ path }) => found.push(path) });
    return found;
  };

  it('judges and reports as its folder does, and the same session gives the same file', async () => {
    const one = at('one.tar.gz');
    expect((await tellwire('report', session, '--bundle', one)).code).toBe(0);
    expect((await tellwire('report', session, '--bundle', at('two.tar.gz'))).code).toBe(0);
    expect(readFileSync(one).equals(readFileSync(at('two.tar.gz')))).toBe(true);
    expect(names(one).toSorted()).toEqual(
      ['capture.log', 'journal.ndjson', 'machine.yaml', 'session.json'].map((name) => `session/${name}`),
    );
    const [folder, file] = [
      await tellwire('replay', session, '--json'),
      await tellwire('replay', one, '--json'),
    ];
    expect(file).toEqual(folder);
    expect((await tellwire('report', one)).code).toBe(0);
    expect(readdirSync(at('one-report')).toSorted()).toEqual(['report.html', 'report.json', 'report.md']);
  });

  it('has the input map of its folder', async () => {
    const [folder, file] = [
      await tellwire('map', session, '--format', 'csv'),
      await tellwire('map', at('one.tar.gz'), '--format', 'csv'),
    ];
    expect(file).toEqual(folder);
    expect((await tellwire('map', at('one.tar.gz'))).out).toContain(`in ${at('one.tar.gz')}.`);
  });

  it('is never written over another', async () =>
    expect((await tellwire('report', session, '--bundle', at('one.tar.gz'))).err).toMatch(
      /is there already/,
    ));

  it('left without names gives the same verdicts and holds none of the names', async () => {
    const file = at('redacted.tar.gz');
    await tellwire('report', session, '--bundle', file, '--redact');
    const verdicts = ({ out }: { readonly out: string }): unknown =>
      (JSON.parse(out) as { verdicts: { check: string; subject: string; status: string }[] }).verdicts.map(
        ({ check, subject, status }) => `${check} ${subject} ${status}`,
      );
    const open = await tellwire('replay', file, '--json');
    expect(verdicts(open)).toEqual(verdicts(await tellwire('replay', session, '--json')));
    expect(open.err).toBe('');
    const machine = readFileSync(join(session, 'machine.yaml'), 'utf8');
    const told = [...machine.matchAll(/^\s*(?:machine|stand|place): (.+)$/gm)].map(([, words = '']) => words);
    expect(told.length).toBeGreaterThan(5);
    await tellwire('report', file, '--format', 'json,md,html,csv,vcd');
    const all = readdirSync(at('redacted-report')).map((name) =>
      readFileSync(join(at('redacted-report'), name), 'utf8'),
    );
    for (const words of told) for (const text of all) expect(text).not.toContain(words);
    expect(all.join('')).toContain('left out');
  });

  it('that is none is the tool’s failure, and nothing is left behind', async () => {
    const before = readdirSync(tmpdir()).filter((name) => name.startsWith('tellwire-bundle-')).length;
    writeFileSync(at('torn.tar.gz'), readFileSync(at('one.tar.gz')).subarray(0, 200));
    const { code, err } = await tellwire('replay', at('torn.tar.gz'));
    expect({ code, said: /no bundle of a session/.test(err) }).toEqual({ code: 3, said: true });
    const other = await tellwire('replay', join(session, 'session.json'));
    expect({ code: other.code, said: /neither a session nor a capture/.test(other.err) }).toEqual({
      code: 3,
      said: true,
    });
    expect(readdirSync(tmpdir()).filter((name) => name.startsWith('tellwire-bundle-'))).toHaveLength(before);
    expect(existsSync(at('session.json'))).toBe(false);
  });
});

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { sumDigits } from '../../src/transport/stream/checksum.ts';
import { readDump } from '../report/signals/vcd-grammar.ts';
import { whenAsked } from '../session/when-asked.ts';
import { tellwire } from './run.ts';

const work = mkdtempSync(join(tmpdir(), 'tellwire-bare-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));
const at = (name: string): string => join(work, name);
const written = (name: string, lines: readonly string[]): string => {
  writeFileSync(at(name), lines.map((line) => `${line}\n`).join(''));
  return at(name);
};

const framed = (body: string) => `$${body}*${sumDigits(body)}`;
/** As `inline` leaves it: what the controller said, and what the program beside it sent. */
const native = () =>
  written('native.log', [
    '0.000 opening /dev/ttyUSB0',
    `5.000 rx ${framed('PTWRD,1,mm,X,x-home door')}`,
    ...['LL,00', 'HL,10', 'HL,10', 'LL,00'].map(
      (bits, i) => `${10 + i * 20}.000 rx ${framed(`PTWRS,${i},${i * 20},still,${bits},1.000`)}`,
    ),
    '80.000 tx anything\\x0a',
    '90.000 rx noise',
    'spoilt',
  ]);
const described = (name: string) =>
  written(name, [
    '0.000 opening tcp://127.0.0.1:4000',
    ...['00', '10', '00', '01'].map((pins, i) => `${10 + i * 20}.000 rx doing=rests pins=${pins}`),
  ]);

describe('a capture without a session', () => {
  it('is said to be one, judges nothing, and tells what the stream said', async () => {
    const { code, out } = await tellwire('replay', native());
    expect(code).toBe(0);
    for (const part of [
      /native\.log is a capture without a session: nobody was asked anything/,
      /9 lines in 90 ms/,
      /4 reports, one every 20 ms/,
      /x-home: 2 changes; at the end level low, inactive\./,
      /door: 0 changes; at the end level low, inactive\./,
      /1 piece written to the port by the program beside it/,
      /passed over: 1 line\./,
    ])
      expect(out).toMatch(part);
    expect(out).not.toMatch(/proved/i);
  });

  it('is told as JSON, and comes as a dump and as edges', async () => {
    const { code, out } = await tellwire(
      'replay',
      native(),
      '--json',
      '--vcd',
      at('a.vcd'),
      '--csv',
      at('a.csv'),
    );
    expect(code).toBe(0);
    const told = JSON.parse(out) as Record<string, unknown>;
    expect(told).toMatchObject({ kind: 'capture', sent: 1, damaged: 1 });
    expect(told).not.toHaveProperty('verdicts');
    expect(told['inputs']).toEqual([
      { input: 'x-home', changes: 2, level: 'L', active: '0' },
      { input: 'door', changes: 0, level: 'L', active: '0' },
    ]);
    const dump = readDump(readFileSync(at('a.vcd'), 'utf8'));
    expect(dump.variables.map(({ reference }) => reference)).toEqual([
      'level_x_home',
      'active_x_home',
      'level_door',
      'active_door',
    ]);
    expect(readFileSync(at('a.csv'), 'utf8')).toMatch(/change,x-home,H,1/);
  });

  it('of an unknown stream is read by its description, named or lying beside it as learn leaves it', async () => {
    const file = described('other.log');
    const unread = await tellwire('replay', file);
    expect(unread.code).toBe(0);
    expect(unread.out).toMatch(/No line of it is a native status sentence.*--stream/);
    writeFileSync(at('words.yaml'), whenAsked());
    const read = await tellwire('replay', file, '--stream', at('words.yaml'));
    expect(read.out).toMatch(/x-home: 2 changes; at the end level not known, inactive\./);
    expect(read.out).toMatch(/stop: 1 change; at the end level not known, active\./);
    mkdirSync(at('learned'));
    described('learned/capture.log');
    writeFileSync(at('learned/stream.yaml'), whenAsked());
    expect((await tellwire('replay', at('learned'))).out).toMatch(/stop: 1 change; /);
  });

  it('has no report, no map and nothing to compare, and it is said what to do instead', async () => {
    const file = native();
    for (const words of [
      ['report', file],
      ['map', file],
      ['compare', file, file],
    ] as const) {
      const { code, err } = await tellwire(...words);
      expect(code).toBe(3);
      expect(err).toMatch(/capture without a session.*tellwire replay` shows/s);
    }
  });
});

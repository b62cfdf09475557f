import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import type { Reading } from '../../src/model/reading.ts';
import { CaptureFile } from '../../src/session/capture-file.ts';
import { CaptureWalk } from '../../src/session/capture-walk.ts';
import { sha256 } from '../../src/session/folder.ts';
import { StreamReader } from '../../src/session/stream-reader.ts';
import { StreamStatistics } from '../../src/session/stream-statistics.ts';
import type { Run } from '../../src/transport/stream/decoder.ts';
import { captureReader } from '../transport/capture-reader.ts';
import { captureOf, framed, step } from './drawn-capture.ts';

const folder = mkdtempSync(join(tmpdir(), 'walked-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function walked(text: string, atOnce: number) {
  const path = join(folder, 'capture.log');
  writeFileSync(path, text, 'latin1');
  const readings: Reading[] = [];
  let slow = 0;
  const file = new CaptureFile(path);
  const walk = new CaptureWalk(file, new StreamReader(), {
    reading: (reading) => readings.push(reading),
    line: () => slow++,
  });
  while (walk.take(atOnce) > 0);
  return { readings, slow, count: walk.count, lastAt: walk.lastAt, length: file.length, hash: file.hash() };
}

/** What is counted on the shortest way, what is read beside it, and how many went in runs. */
function passed(text: string, after: number) {
  const path = join(folder, 'capture.log');
  writeFileSync(path, text, 'latin1');
  const statistics = new StreamStatistics();
  const beside: Reading[] = [];
  const runs: Run[] = [];
  const walk = new CaptureWalk(new CaptureFile(path), new StreamReader(), {
    reading: (reading) => {
      statistics.take(reading);
      if (reading.kind !== 'status') beside.push(reading);
    },
    passing: {
      paces: statistics.paces,
      run(run) {
        statistics.run(run);
        runs.push(run);
      },
    },
  });
  walk.take(after);
  walk.pass();
  const inRuns = runs.reduce((sum, { further }) => sum + 1 + further, 0);
  return {
    facts: statistics.facts(walk.count),
    beside,
    runs,
    inRuns,
    count: walk.count,
    lastAt: walk.lastAt,
  };
}

function plodded(text: string) {
  const reader = new StreamReader();
  const lines = captureReader().push(Buffer.from(text, 'latin1'));
  const readings = lines.flatMap((line) => reader.entry(line));
  return {
    readings,
    count: lines.length,
    lastAt: Math.max(0, ...lines.map((line) => ('at' in line ? line.at : 0))),
  };
}

describe('a saved capture', () => {
  it('says the same on the short way as line by line, whatever happened to the stream', () => {
    let [lines, slow] = [0, 0];
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 5, maxLength: 120 }),
        fc.constantFrom(0, 999_999_990, 99_999_999_990),
        fc.constantFrom(1, 7, Number.POSITIVE_INFINITY),
        fc.constantFrom('', '1.000 rx tor'),
        (steps, start, atOnce, torn) => {
          const text = captureOf(steps, start);
          const { slow: went, length, hash, ...short } = walked(text + torn, atOnce);
          expect(short).toEqual(plodded(text + torn));
          expect([length, hash]).toEqual([text.length, sha256(text)]);
          lines += short.count;
          slow += went;
        },
      ),
      { numRuns: 400, seed: 47 },
    );
    // Otherwise there would have been nothing to compare.
    expect(slow).toBeLessThan(lines * 0.6);
    expect(slow).toBeGreaterThan(lines * 0.05);
  });

  it('is counted alike where only the coming of reports matters any more, whatever happened to the stream', () => {
    let [lines, passing] = [0, 0];
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 5, maxLength: 120 }),
        fc.constantFrom(0, 999_999_990, 99_999_999_990),
        fc.constantFrom(0, 1, 20),
        (steps, start, after) => {
          const text = captureOf(steps, start);
          const { facts, beside, inRuns, count, lastAt } = passed(text, after);
          const whole = plodded(text);
          const statistics = new StreamStatistics();
          for (const reading of whole.readings) statistics.take(reading);
          expect(facts).toEqual(statistics.facts(whole.count));
          expect(beside).toEqual(whole.readings.filter(({ kind }) => kind !== 'status'));
          expect([count, lastAt]).toEqual([whole.count, whole.lastAt]);
          lines += count;
          passing += inRuns;
        },
      ),
      { numRuns: 400, seed: 48 },
    );
    expect(passing).toBeGreaterThan(lines * 0.3);
  });

  /** Statuses 7 ms apart; from the thirtieth on all are off by so much. */
  const steady = (count: number, off: { time?: number; seq?: number; ms?: number }) =>
    Array.from({ length: count }, (_, n) => {
      const { time = 0, seq = 0, ms = 0 } = n < 30 ? {} : off;
      const body = `PTWRS,${40_000 + n + seq},${1000 + n * 7 + ms},moving,HLH,101,1.250,-0.500`;
      return `${(100 + n * 7 + time).toFixed(3)} rx ${framed(body)}\n`;
    }).join('');
  const declared = `0.000 rx ${framed('PTWRD,1,mm,XY,one two three')}\n`;

  it.each([
    ['a report that was lost', { seq: 1 }],
    ['a report that came twice', { seq: -1 }],
    ['a clock that went back', { ms: -20 }],
    ['a clock that ran away', { ms: 2500 }],
    ['an arrival before the one before', { time: -9 }],
  ])('ends a run at %s', (_what, off) => {
    const { runs } = passed(declared + steady(60, off), 5);
    expect(runs[0]?.lastAt).toBe(1000 + 29 * 7);
  });

  it('takes a stream that only goes on in one run', () => {
    const { runs, facts } = passed(declared + steady(60, {}), 5);
    // The declaration and four statuses were read before.
    expect(runs.map(({ further }) => 1 + further)).toEqual([60 - 4 - 1]);
    expect([facts.reports, facts.median, facts.longest]).toEqual([60, 7, 7]);
  });

  it('knows the last two reports of a run: a single clock that was wrong at its end ends nothing', () => {
    const good = steady(60, {}).split('\n');
    const ahead = steady(60, { ms: 1000 }).split('\n');
    const text = declared + good.with(30, ahead[30] ?? '').join('\n');
    const whole = new StreamStatistics();
    for (const reading of plodded(text).readings) whole.take(reading);
    const { facts, runs } = passed(text, 5);
    // The wrong one, of number 30, still goes on from the one before; the next is read at length, and the others go on from it.
    expect(runs.map(({ further }) => 1 + further)).toEqual([30 - 4, 60 - 32]);
    expect(facts).toEqual(whole.facts(61));
    expect([facts.restarts, facts.unreadable]).toEqual([0, {}]);
  });
});

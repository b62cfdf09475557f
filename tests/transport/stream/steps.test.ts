import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import { nativeDecoder } from '../../../src/transport/stream/native-decoder.ts';
import { declared, lineOf, statusBody } from './by-hand.ts';

const turn = 2 ** 32;

/** Statuses and edges, given by sequence, clock and arrival, after a declaration. */
function heard(...said: readonly (readonly [seq: number, clock: number, arrived: number, edge?: 'E'])[]) {
  const decoder = nativeDecoder();
  decoder.decode(lineOf(declared, 0));
  const bodies = said.map(([seq, clock, arrived, edge]) =>
    lineOf(edge ? `PTWRE,${seq},${clock},0,H` : statusBody(seq, clock), arrived),
  );
  return bodies.flatMap((line) => decoder.decode(line)).filter(({ kind }) => kind !== 'declared');
}

const brief = (readings: readonly Reading[]) =>
  readings.map((reading) =>
    reading.kind === 'gap' || reading.kind === 'unreadable'
      ? reading.why
      : 'at' in reading &&
        'lost' in reading &&
        `${reading.at}${reading.lost > 0 ? ` lost ${reading.lost}` : ''}`,
  );

describe('the sequence', () => {
  it('wraps at 65536 without a loss', () => {
    expect(brief(heard([65_534, 0, 0], [65_535, 10, 10], [0, 20, 20], [1, 30, 30]))).toEqual([
      '0',
      '10',
      '20',
      '30',
    ]);
  });

  it('counts what a jump has lost, over the wrap too', () => {
    expect(brief(heard([65_530, 0, 0], [3, 80, 80], [4, 90, 90]))).toEqual(['0', '80 lost 8', '90']);
    expect(brief(heard([0, 0, 0], [2000, 20_000, 20_000]))).toEqual(['0', '20000 lost 1999']);
  });

  it('is shared by statuses and edges', () => {
    expect(brief(heard([7, 100, 0], [8, 104_500, 5, 'E'], [9, 110, 10], [11, 118_000, 20, 'E']))).toEqual([
      '100',
      '104.5',
      '110',
      '118 lost 1',
    ]);
  });

  it('that repeats itself is a line heard twice, not a report', () => {
    expect(brief(heard([1, 10, 0], [2, 20, 10], [2, 20, 11], [3, 30, 20]))).toEqual([
      '10',
      '20',
      'out-of-step',
      '30',
    ]);
  });
});

describe('the clock', () => {
  it('runs on over its wrap at 2^32 ms', () => {
    expect(brief(heard([0, turn - 5, 0], [1, 5, 10], [2, 15, 20]))).toEqual([
      `${turn - 5}`,
      `${turn + 5}`,
      `${turn + 15}`,
    ]);
  });

  it('places an edge whose us clock has wrapped beside the statuses', () => {
    // 5 000 000 ms is 5e9 us: the us clock has wrapped once since the controller started.
    const us = (5_000_004 * 1000) % turn;
    expect(brief(heard([0, 5_000_000, 0], [1, us, 5, 'E'], [2, 5_000_010, 10]))).toEqual([
      '5000000',
      '5000004',
      '5000010',
    ]);
  });

  it('places an edge over the wrap of the us clock', () => {
    const at = Math.floor(turn / 1000);
    const readings = heard([0, at - 1, 0], [1, 500, 2, 'E'], [2, at + 3, 5]);
    expect(brief(readings)).toEqual([`${at - 1}`, `${(turn + 500) / 1000}`, `${at + 3}`]);
  });

  it('lets an edge come a little later than the status that shows it', () => {
    expect(brief(heard([0, 100, 0], [1, 99_200, 1, 'E'], [2, 110, 10]))).toEqual(['100', '99.2', '110']);
  });

  it('that goes back is a restart, once a second report agrees', () => {
    const readings = heard([900, 90_000, 0], [901, 90_010, 10], [0, 40, 1500], [1, 50, 1510], [2, 60, 1520]);
    expect(brief(readings)).toEqual(['90000', '90010', 'out-of-step', 'controller-restarted', '50', '60']);
    expect(readings.map((reading) => 'segment' in reading && reading.segment)).toEqual([
      0,
      0,
      false,
      1,
      1,
      1,
    ]);
  });

  it('may restart long after it has run over half its wrap', () => {
    const old = 3_000_000_000;
    expect(brief(heard([9, old, 0], [10, old + 10, 10], [0, 40, 1500], [1, 50, 1510])).slice(2)).toEqual([
      'out-of-step',
      'controller-restarted',
      '50',
    ]);
  });

  it('that goes back in one report alone is damage: nothing restarted', () => {
    expect(brief(heard([5, 5000, 0], [6, 1010, 10], [7, 5020, 20]))).toEqual([
      '5000',
      'out-of-step',
      '5020 lost 1',
    ]);
  });

  it('that leaps ahead of all that has passed is damage, until a second report agrees', () => {
    expect(brief(heard([5, 5000, 0], [6, 85_010, 10], [7, 5020, 20]))).toEqual([
      '5000',
      'out-of-step',
      '5020 lost 1',
    ]);
    // A host that slept: its clock stood still, the controller's did not. Nothing restarted.
    expect(brief(heard([5, 5000, 0], [900, 85_010, 10], [901, 85_020, 20]))).toEqual([
      '5000',
      'out-of-step',
      '85020 lost 895',
    ]);
  });

  it('damaged a little ahead is outvoted by the next report', () => {
    const readings = heard([5, 5000, 0], [6, 5010, 10], [7, 5820, 20], [8, 5030, 30], [9, 5040, 40]);
    expect(brief(readings)).toEqual(['5000', '5010', '5820', '5030', '5040']);
  });

  it('of a controller that restarts again and again is not taken for damage', () => {
    const readings = heard(
      [0, 50, 0],
      [1, 70, 20],
      [0, 50, 1500],
      [1, 71, 1520],
      [0, 50, 3000],
      [1, 70, 3020],
      [2, 90, 3040],
    );
    expect(readings.filter((reading) => reading.kind === 'gap')).toHaveLength(2);
  });

  it('may stand still on the host while it was held up: old reports come at once', () => {
    const held = Array.from({ length: 20 }, (_, i) => [i + 1, i * 100, 5000] as const);
    expect(brief(heard([0, 0, 0], ...held))).not.toContain('out-of-step');
  });

  it('has no say for an edge alone before the first status', () => {
    const decoder = nativeDecoder();
    decoder.decode(lineOf(declared, 0));
    decoder.decode(lineOf('PTWRE,1,5000,0,H', 1));
    expect(brief(decoder.decode(lineOf(statusBody(2, 6), 2)).slice(1))).toEqual(['out-of-step', '6']);
  });

  it('places voltages, or refuses them', () => {
    const decoder = nativeDecoder();
    for (const body of [declared, statusBody(0, 1000)]) decoder.decode(lineOf(body, 0));
    expect(decoder.decode(lineOf('PTWRA,1005,5000,4980,,0', 5))).toMatchObject([
      { kind: 'volts', at: 1005, volts: [5, 4.98, undefined, 0] },
    ]);
    expect(brief(decoder.decode(lineOf('PTWRA,91005,5000,4980,,0', 6)))).toEqual(['out-of-step']);
    expect(brief([...decoder.gap(ms(7), 'opened')])).toEqual(['opened']);
  });
});

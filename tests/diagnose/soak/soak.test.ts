import { describe, expect, it } from 'vitest';
import { judgeSoak } from '../../../src/diagnose/soak/judge.ts';
import { meanCountAtMost95, meanCountInterval } from '../../../src/diagnose/soak/poisson.ts';
import { TripCounter } from '../../../src/diagnose/soak/trips.ts';
import type { Active, Level, Reading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';

describe('the bounds of a count', () => {
  // Exact limits of F. Garwood, Biometrika 28 (1936) 437–442, as R 4.2.2 prints them with qchisq: lower, upper, one-sided upper.
  it.each([
    [0, 0, 3.688879454, 2.996],
    [1, 0.025317808, 5.571643391, 4.744],
    [2, 0.242209279, 7.224687668, 6.296],
    [3, 0.618672123, 8.76727307, 7.754],
    [5, 1.62348639, 11.668332079, 10.513],
    [10, 4.795388696, 18.390356042, undefined],
    [20, 12.216519585, 30.888377903, undefined],
  ])('of %i are those of the published table', (n, low, high, oneSided) => {
    expect(meanCountInterval(n).low).toBeCloseTo(low, 8);
    expect(meanCountInterval(n).high).toBeCloseTo(high, 8);
    if (oneSided !== undefined) expect(Math.abs(meanCountAtMost95(n) - oneSided)).toBeLessThan(5e-4);
  });

  it('of none is the rule of three: −ln 0.05 (Eypasch et al., BMJ 311 (1995) 619)', () =>
    expect(meanCountAtMost95(0)).toBeCloseTo(2.995732274, 9));

  // R, stats::poisson.test(137, 24.19893), its documented example.
  it('are those of the example in R’s poisson.test', () => {
    const { low, high } = meanCountInterval(137);
    expect(low / 24.19893).toBeCloseTo(4.75312480484875, 8);
    expect(high / 24.19893).toBeCloseTo(6.69270933417607, 8);
  });

  it('want a count', () => expect(() => meanCountInterval(-1)).toThrow(RangeError));
});

/** A report every 10 ms by the controller's clock; `active` says the input at each. */
function watched(bits: string, from = 0, segment = 1): readonly Reading[] {
  return [...bits].map((bit, i) => ({
    kind: 'status',
    arrived: ms(from + i * 10),
    at: ms(from + i * 10),
    segment,
    lost: 0,
    inputs: ['x-home'],
    axes: [],
    activity: 'still',
    levels: [bit === '1' ? 'H' : 'L'] as Level[],
    active: [bit] as Active[],
    positions: [],
  }));
}
const gap: Reading = { kind: 'gap', arrived: ms(0), segment: 2, why: 'lost-port' };
const quiet = '0'.repeat(50);
const counted = (...readings: readonly Reading[]): TripCounter => {
  const counter = new TripCounter();
  for (const reading of readings) counter.take(reading);
  return counter;
};
const trips = (bits: string): number | undefined => counted(...watched(bits)).soaked[0]?.trips;

describe('a false trip', () => {
  it('is one departure from the rest, however long and however it bounces', () => {
    expect(trips(quiet)).toBe(0);
    expect(trips(`${quiet}1${quiet}`)).toBe(1);
    expect(trips(`${quiet}${'1'.repeat(40)}${quiet}`)).toBe(1);
    expect(trips(`${quiet}10110101${quiet}`)).toBe(1);
    expect(trips(`${quiet}1${quiet}1${quiet}`)).toBe(2);
  });

  it('is one too where the input never came back', () => {
    const [soaked] = counted(...watched(`${quiet}${'1'.repeat(200)}`)).soaked;
    expect(soaked).toEqual({ input: 'x-home', trips: 1, away: true });
  });

  it('is not counted for a change that fell into a break of the stream', () => {
    const counter = counted(...watched(quiet), gap, ...watched('1'.repeat(50), 5000, 2));
    expect(counter.soaked[0]?.trips).toBe(0);
    expect(counter.interruptions).toBe(1);
  });

  it('is watched for by the controller’s clock, and never through a hole', () => {
    expect(counted(...watched('0'.repeat(101))).watched).toBe(1000);
    expect(counted(...watched('0'), ...watched('0', 5000)).watched).toBe(0);
  });
});

describe('a soak', () => {
  const hours = (count: number, bits = '0') => {
    const counter = counted(...watched(bits));
    const [last] = watched('0', 1000);
    for (let at = 1000; at <= count * 3_600_000; at += 1000)
      if (last) counter.take({ ...last, at: ms(at), arrived: ms(at) } as Reading);
    return judgeSoak(counter)[0];
  };

  it('of ten hours without a trip bounds the rate at 0.3 an hour', () => {
    const verdict = hours(10);
    expect(verdict).toMatchObject({ check: 'soak', subject: 'x-home', status: 'proved', findings: [] });
    // −ln 0.05 / 10 h: 0.29957 an hour.
    expect(verdict?.facts.soak?.perHourAtMost95).toBeCloseTo(0.29957, 4);
  });

  it('with a trip fails, with the interval of the rate', () => {
    const verdict = hours(1, '01');
    expect(verdict?.status).toBe('failed');
    const [finding] = verdict?.findings ?? [];
    expect(finding).toMatchObject({ kind: 'false-trips', input: 'x-home', trips: 1 });
    expect(finding?.kind === 'false-trips' && finding.high).toBeCloseTo(5.571643391, 2);
  });

  it('of a few seconds proves nothing', () =>
    expect(judgeSoak(counted(...watched(quiet)))[0]).toMatchObject({
      status: 'inconclusive',
      missing: ['watched-too-short'],
    }));
});

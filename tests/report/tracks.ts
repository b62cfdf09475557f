import type { AxisTrack, TrackPoint } from '../../src/model/motion-facts.ts';
import { mm, ms } from '../../src/model/units.ts';

/** Two motions of the workshop machine, told by hand. */
export const base = { unit: 'mm' } as const;
export const apart = (low: number, high: number) => ({ low: mm(low), high: mm(high) });
const when = (low: number, high: number) => ({ low: ms(low), high: ms(high) });

/** Straight ways between corners, a report every 40 ms; `undefined` begins a new stretch. */
function way(...corners: readonly (readonly [t: number, position: number] | undefined)[]): TrackPoint[] {
  const points: TrackPoint[] = [];
  let before: readonly [number, number] | undefined;
  for (const corner of corners) {
    if (corner === undefined) {
      before = undefined;
      continue;
    }
    const [t, position] = corner;
    if (before === undefined)
      points.push({ t: ms(t), position: mm(position), ...(points.length > 0 && { apart: true }) });
    else {
      const [from, start] = before;
      for (let at = from + 40; at <= t; at += 40)
        points.push({
          t: ms(at),
          position: mm(Math.round((start + ((position - start) * (at - from)) / (t - from)) * 80) / 80),
        });
    }
    before = corner;
  }
  return points;
}

/** A homing of X to its left end: fast, back, slow, back, and the numbers set anew. */
export const homingTrack: AxisTrack = {
  ...base,
  axis: 'X',
  label: 'homing',
  from: ms(412_000),
  to: ms(424_400),
  samples: 311,
  points: way(
    [0, 92.5],
    [400, 92.5],
    [7400, -1.3],
    [7720, -1.3],
    [8320, 1.7],
    [8520, 1.7],
    [10_000, -0.3],
    [10_200, -0.3],
    [11_200, 1.2],
    [11_400, 1.2],
    undefined,
    [11_440, 0],
    [12_400, 0],
  ),
  trips: [
    { input: 'x-home', to: 'operated', t: when(7280, 7320), position: apart(-0.7, -0.2), wanted: true },
    { input: 'x-home', to: 'free', t: when(8040, 8080), position: apart(0.3, 0.5), wanted: true },
    { input: 'x-home', to: 'operated', t: when(9880, 9920), position: apart(-0.2, -0.1), wanted: true },
    { input: 'x-home', to: 'free', t: when(10_520, 10_560), position: apart(0.2, 0.3), wanted: true },
  ],
  reversals: [
    { t: ms(7560), position: mm(-1.3) },
    { t: ms(8400), position: mm(1.7) },
    { t: ms(10_080), position: mm(-0.3) },
  ],
  expected: -1,
  zeroSet: { t: ms(11_440), before: mm(1.2), after: mm(0) },
};

/** A seek of Z that ran down to the work until it was stopped. */
export const wrongWayTrack: AxisTrack = {
  ...base,
  axis: 'Z',
  label: 'seek',
  from: ms(380_000),
  to: ms(383_000),
  samples: 75,
  points: way([0, -41.2], [600, -41.2], [1400, -49.2], [1440, -49.3], undefined, [1700, -51], [2960, -51]),
  trips: [
    { input: 'plate', to: 'operated', t: when(1400, 1440), position: apart(-49.4, -49.1), wanted: false },
  ],
  reversals: [],
  expected: 1,
  alarm: { t: ms(720) },
};

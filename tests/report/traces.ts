import { ms } from '../../src/model/units.ts';
import type { Resolution, Trace, TraceLabel, TracePoint } from '../../src/model/verdict.ts';

const point = (t: number, closed: boolean, active: boolean): TracePoint => ({
  t: ms(t),
  level: closed ? 'L' : 'H',
  active: active ? '1' : '0',
});

/** A press as a stream of one report every 16 ms sees it: the ends and both sides of each change. */
export function pressTrace(input: string, from: number, held: number, shape: PressShape): Trace {
  const { closedAtRest, activeWhenOpen } = shape;
  const at = (t: number, closed: boolean) => point(t, closed, closed !== activeWhenOpen);
  const down = 304;
  const up = down + Math.round(held / 16) * 16;
  return {
    label: shape.label ?? 'press',
    from: ms(from),
    to: ms(from + up + 304),
    samples: Math.round((up + 304) / 16) + 1,
    signals: [
      {
        input,
        points: [
          at(0, closedAtRest),
          at(down - 16, closedAtRest),
          at(down, !closedAtRest),
          at(up - 16, !closedAtRest),
          at(up, closedAtRest),
          at(up + 304, closedAtRest),
        ],
      },
    ],
  };
}

export interface PressShape {
  readonly closedAtRest: boolean;
  readonly activeWhenOpen: boolean;
  readonly label?: TraceLabel;
}

/** Nothing moved for as long as it was watched. */
export const flatTrace = (
  input: string,
  label: TraceLabel,
  from: number,
  length: number,
  closed: boolean,
  active: boolean,
): Trace => ({
  label,
  from: ms(from),
  to: ms(from + length),
  samples: Math.round(length / 16) + 1,
  signals: [{ input, points: [point(0, closed, active), point(length, closed, active)] }],
});

/** A plug is pulled: one change, and it holds. */
export const pulledTrace = (input: string, from: number, wasActive: boolean, nowActive: boolean): Trace => ({
  label: 'out',
  from: ms(from),
  to: ms(from + 1904),
  samples: 120,
  signals: [
    {
      input,
      points: [
        point(0, true, wasActive),
        point(288, true, wasActive),
        point(304, false, nowActive),
        point(1904, false, nowActive),
      ],
    },
  ],
});

/** Two wires that touch: both inputs move, and one of them flickers on the way. */
export const togetherTrace = (one: string, other: string): Trace => ({
  label: 'press',
  from: ms(61_000),
  to: ms(62_600),
  samples: 101,
  signals: [
    {
      input: one,
      points: [0, 288, 304, 1280, 1296, 1600].map((t) => point(t, t < 300 || t > 1290, t > 300 && t < 1290)),
    },
    {
      input: other,
      points: [0, 288, 304, 336, 352, 368, 384, 1296, 1312, 1600].map((t, i) =>
        point(t, ![2, 3, 6, 7].includes(i), [2, 3, 6, 7].includes(i)),
      ),
    },
  ],
});

export const seen: Resolution = {
  reports: 118,
  median: ms(16),
  longest: ms(33.4),
  surePulse: ms(33.4),
  lost: 0,
  unreadable: 0,
};

import { scaleLinear } from 'd3-scale';
import type { Trace, TracePoint } from '../../model/verdict.ts';

/** A waveform laid out: lanes from top to bottom in units of the drawing, nothing decided that the trace does not say. */
export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Where the time axis stands. */
  readonly base: number;
  readonly unit: 'ms' | 's';
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly signals: readonly PlottedSignal[];
}

export interface PlottedSignal {
  readonly input: string;
  readonly nameAt: number;
  readonly lanes: readonly Lane[];
  readonly points: readonly (TracePoint & { readonly x: number; readonly y: number })[];
}

export interface Lane {
  readonly of: 'active' | 'level';
  readonly top: number;
  readonly bottom: number;
  /** Spans over which the same value was reported; a middle height is a value that was not reported. */
  readonly runs: readonly {
    readonly from: number;
    readonly to: number;
    readonly y: number;
    readonly known: boolean;
  }[];
  /** Between the last report of one value and the first of the next: the change lies somewhere inside. */
  readonly doubts: readonly {
    readonly from: number;
    readonly to: number;
    readonly y1: number;
    readonly y2: number;
  }[];
}

const width = 240;
const left = 36;
const right = width - 6;
const nameHeight = 16;
const laneHeight = { active: 20, level: 12 } as const;
const laneGap = 11;
const axisHeight = 16;
const fraction = { '1': 0, H: 0, '0': 1, L: 1, '?': 0.5 } as const;

/** Two digits after the point are finer than any printer. */
const cut = (value: number): number => Math.round(value * 100) / 100;

export function plotOf({ signals }: Trace): Plot {
  const end = signals.flatMap(({ points }) => points).reduce((most, { t }) => Math.max(most, t), 0);
  const scale = scaleLinear([0, Math.max(end, 1)], [left, right]);
  const unit = end >= 2500 ? 's' : 'ms';
  let top = 0;
  const plotted = signals.map(({ input, points }): PlottedSignal => {
    const nameAt = top + nameHeight - 7;
    top += nameHeight;
    const lanes = lanesOf(points).map((of) => {
      const lane = laneOf(of, points, top, (t) => cut(scale(t)));
      top = lane.bottom + laneGap;
      return lane;
    });
    return { input, nameAt, lanes, points: dots(points, lanes[0], (t) => cut(scale(t))) };
  });
  return {
    width,
    height: top + axisHeight,
    left,
    right,
    base: top,
    unit,
    ticks: scale.ticks(4).map((t) => ({ x: cut(scale(t)), label: unit === 's' ? `${t / 1000}` : `${t}` })),
    signals: plotted,
  };
}

/** A value that was never reported gets no lane; a signal with neither keeps one, so that its silence is seen. */
function lanesOf(points: readonly TracePoint[]): readonly Lane['of'][] {
  const reported = (['active', 'level'] as const).filter((of) => points.some((each) => each[of] !== '?'));
  return reported.length === 0 ? ['active'] : reported;
}

function laneOf(of: Lane['of'], points: readonly TracePoint[], top: number, x: (t: number) => number): Lane {
  const bottom = top + laneHeight[of];
  const y = (point: TracePoint) => cut(top + fraction[point[of]] * laneHeight[of]);
  const pairs = points.slice(1).map((after, i) => ({ before: points[i] ?? after, after }));
  const same = pairs.filter(({ before, after }) => before[of] === after[of]);
  const other = pairs.filter(({ before, after }) => before[of] !== after[of]);
  return {
    of,
    top,
    bottom,
    runs: same.map(({ before, after }) => ({
      from: x(before.t),
      to: x(after.t),
      y: y(before),
      known: before[of] !== '?',
    })),
    doubts: other.map(({ before, after }) => ({
      from: x(before.t),
      to: x(after.t),
      y1: y(before),
      y2: y(after),
    })),
  };
}

const dots = (points: readonly TracePoint[], lane: Lane | undefined, x: (t: number) => number) =>
  lane === undefined
    ? []
    : points.map((point) => ({
        ...point,
        x: x(point.t),
        y: cut(lane.top + fraction[point[lane.of]] * (lane.bottom - lane.top)),
      }));

import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { AxisTrack, Between, TrackPoint } from '../../../model/motion-facts.ts';
import { eventsOf, type TrackEventKind } from '../../../words/motion/track-words.ts';
import { stacked } from '../stacked.ts';

/** A motion laid out: time to the right, position upward, everything in units of the drawing. */
export interface TrackPlot {
  readonly width: number;
  readonly height: number;
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly path: string;
  readonly across: readonly { readonly x: number; readonly label: string }[];
  readonly up: readonly { readonly y: number; readonly label: string }[];
  readonly marks: readonly TrackMark[];
}

export interface TrackMark {
  readonly kind: TrackEventKind;
  /** As the table beside the drawing counts, from 1. */
  readonly number: number;
  /** When it can have been. */
  readonly from: number;
  readonly to: number;
  /** Where its number stands. */
  readonly nameX: number;
  readonly nameY: number;
  /** Where the axis can have been then; undefined where it was not reported. */
  readonly y?: Between | undefined;
}

const width = 640;
const box = { left: 52, right: 588, bottom: 232 };
const nameRow = 13;

/** Two digits after the point are finer than any printer. */
const cut = (value: number): number => Math.round(value * 100) / 100;

export function trackPlot(track: AxisTrack): TrackPlot {
  const { points } = track;
  const events = eventsOf(track);
  const time = scaleLinear(
    span(
      points.map(({ t }) => t),
      0,
    ),
    [box.left, box.right],
  );
  const middles = events.map(({ t }) => cut(time((t.low + t.high) / 2)));
  const names = stacked(
    middles.map((x) => ({ x, width: 16 })),
    { from: 0, to: width },
  );
  const rows = Math.max(0, ...names.map(({ row }) => row)) + (names.length > 0 ? 1 : 0);
  const top = 8 + rows * nameRow;
  const position = scaleLinear(spanOf(track), [box.bottom, top + 6]);
  const seconds = (t: number) => `${t / 1000}`;
  return {
    width,
    height: 268,
    box: { ...box, top },
    path: pathOf(
      points,
      (t) => cut(time(t)),
      (at) => cut(position(at)),
    ),
    across: time.ticks(8).map((t) => ({ x: cut(time(t)), label: seconds(t) })),
    up: position.ticks(6).map((at) => ({ y: cut(position(at)), label: `${at}`.replace('-', '−') })),
    marks: events.map(({ kind, t, position: place, set }, i) => ({
      kind,
      number: i + 1,
      from: cut(time(t.low)),
      to: cut(time(t.high)),
      nameX: names[i]?.x ?? 0,
      nameY: top - 5 - (names[i]?.row ?? 0) * nameRow,
      y: placed(place ?? (set && { low: set[1], high: set[1] }), (at) => cut(position(at))),
    })),
  };
}

const placed = (place: Between | undefined, y: (at: number) => number): Between | undefined =>
  place && { low: y(place.high), high: y(place.low) };

/** Least and most, never one and the same. */
function span(values: readonly number[], spare: number): [number, number] {
  const low = values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  if (low > high) return [0, 1];
  const room = (high - low) * spare;
  return low === high ? [low - 0.5, low + 0.5] : [low - room, high + room];
}

function spanOf({ points, trips, reversals, zeroSet }: AxisTrack): [number, number] {
  const trip = trips.flatMap(({ position }) => (position ? [position.low, position.high] : []));
  const set = zeroSet ? [zeroSet.before, zeroSet.after] : [];
  return span([...points, ...reversals].map(({ position }) => position as number).concat(trip, set), 0.06);
}

/** A new line begins where reports are missing or the numbers were set anew: nothing is drawn that was not reported. */
function pathOf(points: readonly TrackPoint[], x: (t: number) => number, y: (at: number) => number): string {
  const pieces: TrackPoint[][] = [];
  for (const point of points) {
    const last = pieces.at(-1);
    if (last === undefined || point.apart === true) pieces.push([point]);
    else last.push(point);
  }
  const drawn = line<TrackPoint>(
    ({ t }) => x(t),
    ({ position }) => y(position),
  ).digits(2);
  return pieces.map((piece) => drawn(piece) ?? '').join('');
}

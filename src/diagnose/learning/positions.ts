import type { AxisLetter } from '../../model/machine.ts';
import { median } from '../../model/statistics.ts';
import { numberIn } from '../../model/stream-description.ts';
import type { Trial } from './observed.ts';
import { isBareColumn, linesRank } from './reading-of.ts';
import { type Column, isSamePlace, type Series } from './series.ts';

/** A number that went with an axis and with nothing else. */
export interface Position {
  readonly series: Series;
  /** mm or degrees for one of what is counted. */
  readonly scale: number;
  /** Different values while it was moved: one that jumps to its end shows where the axis is sent, not where it is. */
  readonly values: number;
  readonly lines: number;
}

/** By so much of the distance another axis' move, or a press, may change it; and a distance may be misjudged. */
const stray = 0.03;
const inexact = 0.02;

/** A series of numbers, trial by trial. */
export interface Track {
  readonly series: Series;
  readonly heard: readonly (readonly number[])[];
  /** How far it went in each trial. */
  readonly steps: readonly number[];
}

/** All series that are numbers and changed in some move. */
export function tracksIn(
  all: readonly Series[],
  trials: readonly Trial[],
  trialOf: Int32Array,
): readonly Track[] {
  const known = new Map<Column, Omit<Track, 'series'> | undefined>();
  return all.flatMap((series) => {
    const { column } = series;
    if (!known.has(column)) known.set(column, numbersIn(column, trials, trialOf));
    const track = known.get(column);
    return track ? [{ series, ...track }] : [];
  });
}

function numbersIn(
  { at, values, texts, counts }: Column,
  trials: readonly Trial[],
  trialOf: Int32Array,
): Omit<Track, 'series'> | undefined {
  const numbers = texts.map(numberIn);
  const readable = numbers.reduce(
    (sum: number, each, i) => sum + (each === undefined ? 0 : (counts[i] ?? 0)),
    0,
  );
  if (readable < at.length * 0.9) return undefined;
  const heard: number[][] = trials.map(() => []);
  for (const [i, index] of at.entries()) {
    const value = numbers[values[i] ?? 0];
    if (value !== undefined) heard[trialOf[index] ?? -1]?.push(value);
  }
  const steps = stepsOf(heard);
  return steps.some((step, i) => step !== 0 && trials[i]?.asked.kind === 'move')
    ? { heard, steps }
    : undefined;
}

/** Everything that followed an axis, the same place once; the one with more values between its ends before one with fewer. */
export function positionsOf(
  axis: AxisLetter,
  tracks: readonly Track[],
  trials: readonly Trial[],
): readonly Position[] {
  const found: Position[] = [];
  for (const track of tracks) {
    const position = followed(axis, track, trials);
    if (!position) continue;
    const same = found.findIndex((each) => isSamePlace(each.series, position.series));
    const other = found[same];
    if (!other) found.push(position);
    else if (closer(position, other)) found[same] = position;
  }
  const exact = found.filter(({ scale }) => isUsual(scale));
  const fitting = exact.length > 0 ? exact : found;
  const most = fitting.reduce((best, { values }) => Math.max(best, values), 0);
  // In the order of the line: what is asked about several axes at once goes together.
  const placeOf = ({ series: { places } }: Position) => places[0] ?? 0;
  return fitting
    .filter(({ values }) => values >= most * 0.6)
    .sort((one, other) => placeOf(one) - placeOf(other));
}

/** In as many lines, and chosen more closely. */
function closer(one: Position, other: Position): boolean {
  // Other lines that hold something in the same column are no reports of it.
  const [isChosen, wasChosen] = [isChosenColumn(one.series), isChosenColumn(other.series)];
  if (isChosen !== wasChosen && isBareColumn(one.series) && isBareColumn(other.series)) {
    const [chosen, loose] = isChosen ? [one, other] : [other, one];
    if (chosen.lines > loose.lines * 0.8) return isChosen;
  }
  if (one.lines < other.lines * 0.98) return false;
  if (one.lines * 0.98 > other.lines) return true;
  const rank = ({ series }: Position) =>
    (/^(?:word|number)-\d/.test(series.field) ? 10 : 0) + linesRank(series);
  return rank(one) < rank(other);
}

const isChosenColumn = ({ lines }: Series) => Object.keys(lines).length > 0;

const isUsual = (scale: number) => scale === 1 || scale === 25.4;

function followed(
  axis: AxisLetter,
  { series, heard, steps }: Track,
  trials: readonly Trial[],
): Position | undefined {
  const own = trials.flatMap(({ asked }, i) =>
    asked.kind === 'move' && asked.axis === axis
      ? [{ by: asked.by, step: steps[i] ?? 0, values: heard[i] ?? [] }]
      : [],
  );
  if (own.length < 2 || own.some(({ values }) => values.length < 6)) return undefined;
  const ratios = own.map(({ by, step }) => step / by);
  const ratio = median(ratios) ?? 0;
  if (!(ratio > 0) || ratios.some((each) => Math.abs(each / ratio - 1) > inexact * 2)) return undefined;
  const least = Math.min(...own.map(({ by }) => Math.abs(by))) * ratio;
  const elsewhere = trials.some(
    ({ asked }, i) =>
      !(asked.kind === 'move' && asked.axis === axis) && Math.abs(steps[i] ?? 0) > least * stray,
  );
  if (elsewhere || !own.every(({ by, step, values }) => isMonotone(values, by, Math.abs(step))))
    return undefined;
  const values = own.reduce((sum, each) => sum + new Set(each.values).size, 0);
  return { series, scale: scaleOf(ratio), values, lines: series.at.length };
}

/** How far it went in each trial. Where nothing was heard until the move was over, it went from where the trial before left it. */
function stepsOf(heard: readonly (readonly number[])[]): readonly number[] {
  let before: number | undefined;
  return heard.map((values) => {
    const end = median(values.slice(-3));
    const own = median(values.slice(0, 3));
    const start = own === end ? (before ?? own) : own;
    before = end ?? before;
    return (end ?? 0) - (start ?? 0);
  });
}

/** It goes one way only, but for lines that arrived damaged. */
function isMonotone(values: readonly number[], by: number, length: number): boolean {
  const back = values.filter(
    (value, i) => i > 0 && (value - (values[i - 1] ?? value)) * by < -length * 0.02,
  ).length;
  return back <= Math.max(0, Math.ceil(values.length * 0.06));
}

/** A millimetre or an inch where it is within what a person misjudges; else as counted, to four figures. */
function scaleOf(ratio: number): number {
  for (const usual of [1, 25.4]) if (Math.abs(ratio * usual - 1) < inexact) return usual;
  return Number((1 / ratio).toPrecision(4));
}

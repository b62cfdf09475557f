import type { LinesMeant } from '../../model/stream-description.ts';
import type { LineKind } from './line-kinds.ts';
import type { HeardLine } from './observed.ts';

/** What one name held over the lines of one kind. */
export interface Series {
  readonly field: string;
  readonly lines: LinesMeant;
  /** Indexes of the lines that hold it, in order; beside each the index of its text and its place in the line. */
  readonly at: readonly number[];
  readonly values: readonly number[];
  readonly places: readonly number[];
  /** The different texts, and how often each came. */
  readonly texts: readonly string[];
  readonly counts: readonly number[];
}

const mostSeries = 6000;
/** A name that is heard less often in the lines of its kind is damage, or no report. */
const smallestShare = 0.01;

export function seriesOf(heard: readonly HeardLine[], kinds: readonly LineKind[]): readonly Series[] {
  const all: Series[] = [];
  for (const { lines, members } of kinds) {
    const growing = new Map<string, Growing>();
    for (const index of members) {
      for (const { path, text, place } of heard[index]?.fields ?? []) {
        const series = growing.get(path) ?? begun();
        growing.set(path, series);
        add(series, index, text, place);
      }
    }
    const least = Math.max(4, members.length * smallestShare);
    for (const [field, { at, values, places, texts, counts }] of growing)
      if (at.length >= least && all.length < mostSeries)
        all.push({ field, lines, at, values, places, texts: [...texts.keys()], counts });
  }
  return all;
}

interface Growing {
  readonly at: number[];
  readonly values: number[];
  readonly places: number[];
  readonly texts: Map<string, number>;
  readonly counts: number[];
}

const begun = (): Growing => ({ at: [], values: [], places: [], texts: new Map(), counts: [] });

function add(
  { at, values, places, texts, counts }: Growing,
  index: number,
  text: string,
  place: number,
): void {
  // The first of two values under one name is the one a decoder reads.
  if (at.at(-1) === index) return;
  const value = texts.get(text) ?? texts.size;
  texts.set(text, value);
  at.push(index);
  values.push(value);
  places.push(place);
  counts[value] = (counts[value] ?? 0) + 1;
}

/** Whether two series tell of the very same characters of the very same lines, wherever both tell something. */
export function isSamePlace(one: Series, other: Series): boolean {
  if (rootOf(one.field) === rootOf(other.field) && JSON.stringify(one.lines) === JSON.stringify(other.lines))
    return true;
  let shared = 0;
  let same = 0;
  for (let i = 0, j = 0; i < one.at.length && j < other.at.length; ) {
    const a = one.at[i] ?? 0;
    const b = other.at[j] ?? 0;
    if (a === b) {
      shared++;
      if (one.places[i] === other.places[j]) same++;
    }
    if (a <= b) i++;
    if (b <= a) j++;
  }
  return shared > 0 && same >= shared * 0.95;
}

/** A set of words, and the first of them, go by one name. */
const rootOf = (field: string) => field.replace(/\.\*$/, '');

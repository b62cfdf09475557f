import type { LinesMeant } from '../../model/stream-description.ts';
import type { LineKind } from './line-kinds.ts';
import type { HeardLine } from './observed.ts';

/** What one name held, line after line. */
export interface Column {
  /** Indexes of the lines that hold it, in order; beside each the index of its text and its place in the line. */
  readonly at: readonly number[];
  readonly values: readonly number[];
  readonly places: readonly number[];
  /** The different texts, and how often each came. */
  readonly texts: readonly string[];
  readonly counts: readonly number[];
}

/** What one name held over the lines of one kind. Kinds that differ in lines without the name share one column. */
export interface Series extends Column {
  readonly field: string;
  readonly lines: LinesMeant;
  readonly column: Column;
}

const mostSeries = 6000;
/** More names than these are no report's: whoever makes up new ones all the time is not followed. */
const mostColumns = 20_000;
/** A name that is heard less often in the lines of its kind is damage, or no report. */
const smallestShare = 0.01;

export function seriesOf(heard: readonly HeardLine[], kinds: readonly LineKind[]): readonly Series[] {
  const columns = columnsOf(heard);
  const all: Series[] = [];
  for (const { lines, members } of kinds) {
    const least = Math.max(4, members.length * smallestShare);
    const isMember = new Uint8Array(heard.length);
    for (const index of members) isMember[index] = 1;
    for (const [field, whole] of columns) {
      if (whole.at.length < least || all.length >= mostSeries) continue;
      const held = whole.at.reduce((sum, index) => sum + (isMember[index] ?? 0), 0);
      if (held < least) continue;
      const column = held === whole.at.length ? whole : among(whole, isMember);
      all.push({ field, lines, column, ...column });
    }
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
const grown = ({ at, values, places, texts, counts }: Growing): Column => ({
  at,
  values,
  places,
  texts: [...texts.keys()],
  counts,
});

function columnsOf(heard: readonly HeardLine[]): ReadonlyMap<string, Column> {
  const growing = new Map<string, Growing>();
  for (const [index, { fields }] of heard.entries()) {
    for (const { path, text, place } of fields) {
      const column = growing.get(path) ?? begun();
      if (column.at.length === 0) {
        if (growing.size >= mostColumns) continue;
        growing.set(path, column);
      }
      add(column, index, text, place);
    }
  }
  return new Map([...growing].map(([path, each]) => [path, grown(each)]));
}

/** The part of a column that stands in lines of one kind. */
function among({ at, values, places, texts }: Column, isMember: Uint8Array): Column {
  const kept = begun();
  for (const [i, index] of at.entries())
    if (isMember[index] === 1) add(kept, index, texts[values[i] ?? 0] ?? '', places[i] ?? 0);
  return grown(kept);
}

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
  if (one.column === other.column) return true;
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

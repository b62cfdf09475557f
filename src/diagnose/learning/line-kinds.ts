import type { Field, LinesMeant } from '../../model/stream-description.ts';
import type { HeardLine } from './observed.ts';

/** A way of choosing lines, and the lines it chooses. */
export interface LineKind {
  readonly lines: LinesMeant;
  readonly members: readonly number[];
}

const mostKinds = 160;
const fewest = 4;
const smallestShare = 0.007;

/**
 * Every way of choosing lines that may single out one kind of report among several: all, by how many values, by the first name, by
 * or last name, by the word or small number that one of the first two values is. Of those that choose the same lines the closest one stays.
 */
export function lineKindsOf(heard: readonly HeardLine[]): readonly LineKind[] {
  const chosen = new Map<string, { lines: LinesMeant; rank: number; members: number[] }>();
  for (const [index, line] of heard.entries()) {
    for (const [rank, { key, lines }] of waysOf(line).entries()) {
      const found = chosen.get(key);
      if (found) found.members.push(index);
      else if (chosen.size < mostKinds * 50) chosen.set(key, { lines: lines(), rank, members: [index] });
    }
  }
  const least = Math.max(fewest, heard.length * smallestShare);
  const large = [...chosen.values()].filter(({ members }) => members.length >= least);
  const distinct = new Map<string, (typeof large)[number]>();
  for (const kind of large) {
    const same = signature(kind.members);
    const other = distinct.get(same);
    if (!other || kind.rank > other.rank) distinct.set(same, kind);
  }
  return [...distinct.values()].sort((a, b) => b.members.length - a.members.length).slice(0, mostKinds);
}

interface Way {
  /** No two ways share one. */
  readonly key: string;
  readonly lines: () => LinesMeant;
}

const any: Way = { key: '', lines: () => ({}) };

/** From the loosest to the closest. */
function waysOf({ fields, count }: HeardLine): readonly Way[] {
  const [first] = fields;
  if (!first) return [any];
  const ways: Way[] = [any, { key: String(count), lines: () => ({ count }) }];
  // A value that never changed may yet change, as the word for standing still does once it moves: a name chooses better.
  const tags = tagsOf(fields);
  for (const { path, text } of tags)
    ways.push({ key: `v${path}\0${text}`, lines: () => ({ values: { [path]: text } }) });
  const [one, two] = tags;
  if (one && two)
    ways.push({
      key: `w${one.path}\0${one.text}\0${two.path}\0${two.text}`,
      lines: () => ({ values: { [one.path]: one.text, [two.path]: two.text } }),
    });
  // Lines that hold a set of words and nothing else with a name are known by the set: it goes by one name, whatever is in it.
  for (const set of setsOf(fields)) ways.push({ key: `s${set}`, lines: () => ({ has: set }) });
  const has = lastNamed(fields)?.path;
  if (has !== undefined) ways.push({ key: `h${has}`, lines: () => ({ has }) });
  const begins = first.path;
  if (/^[a-z_]/i.test(begins)) ways.push({ key: `b${begins}`, lines: () => ({ begins }) });
  return ways;
}

const mostSets = 4;

/** The names of sets come behind all others. */
function setsOf(fields: readonly Field[]): readonly string[] {
  const sets: string[] = [];
  for (let i = fields.length - 1; i >= 0 && sets.length < mostSets; i--) {
    const path = fields[i]?.path;
    if (!path?.endsWith('.*')) break;
    sets.push(path);
  }
  return sets;
}

/** A set of words that stands first and may be empty leaves the line without a first name to know it by; the last stays. */
function lastNamed(fields: readonly Field[]): Field | undefined {
  let last: Field | undefined;
  for (const field of fields) {
    // Derived names come behind all others.
    if (last && field.place < last.place) break;
    if (/^[a-z_]/i.test(field.path) && isPlain(field.path)) last = field;
  }
  return last;
}

/** What stands first in the line and may name its kind; derived names, which come behind all others, are none. */
function tagsOf(fields: readonly Field[]): readonly Field[] {
  const tags: Field[] = [];
  for (const field of fields) {
    if (field.place >= 2) break;
    if (isTag(field) && isPlain(field.path)) tags.push(field);
  }
  return tags;
}

const isPlain = (path: string) => !/^(?:word|number)-\d+$|\*$/.test(path) && path !== '__proto__';
const isTag = ({ text }: Field) => /^(?=.*[a-z])[\w.-]{1,24}$/i.test(text) || /^\d{1,2}$/.test(text);

/** Two sets of lines of one size and one sum of mixed indexes are the same set, but for a chance nobody meets. */
function signature(members: readonly number[]): string {
  let sum = 0;
  for (const index of members)
    sum = (sum + Math.imul(index + 1, 0x9e3779b1) * (1 + (index % 8191))) % 2 ** 52;
  return `${members.length} ${members[0]} ${members.at(-1)} ${sum}`;
}

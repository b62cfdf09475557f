import { mayBeMissing, type Part } from '../../model/stream-description.ts';
import type { Trial } from './observed.ts';
import { partsIn, rare } from './parts.ts';
import type { Series } from './series.ts';

/** Something in the stream with two states, and in which trials it left the one it has at rest. */
export interface Answer {
  readonly series: Series;
  readonly part: Part;
  readonly rest: readonly string[];
  readonly away: readonly string[];
  /** By trial: it was away for at least two of its lines running. */
  readonly left: readonly boolean[];
  /** By trial: it ended as at rest. */
  readonly returned: readonly boolean[];
  /** Lines in which it stood at rest or away. */
  readonly lines: number;
  /** Of these, how many fit neither. */
  readonly odd: number;
  /** Lines away in trials that it did not leave: now and then damage, often another thing under the same name. */
  readonly stray: number;
}

const mostAway = 24;

/** Every two-valued thing in a name that had one state at rest. `membersOf` gives the lines in which it might have been missing. */
export function answersIn(
  series: Series,
  trials: readonly Trial[],
  trialOf: Int32Array,
  members: readonly number[],
): readonly Answer[] {
  return partsIn(series).flatMap(({ part, symbols }) => {
    const { at, told } = mayBeMissing(part) ? filled(series, symbols, members) : plain(series, symbols);
    const rest = mostAtRest(at, told, trials, trialOf);
    if (rest === undefined) return [];
    const others = commonIn(told).filter((symbol) => symbol !== rest);
    if (others.length > mostAway) return [];
    return others.map((away) => answer({ series, part, rest, away, at, told, trials, trialOf, others }));
  });
}

const plain = (series: Series, symbols: readonly (string | undefined)[]) => ({
  at: series.at,
  told: series.values.map((value) => symbols[value]),
});

/** Where a name is missing from a line of its kind, what it would hold is not there. */
function filled(series: Series, symbols: readonly (string | undefined)[], members: readonly number[]) {
  const held = new Map(series.at.map((index, i) => [index, symbols[series.values[i] ?? 0]]));
  return { at: members, told: members.map((index) => (held.has(index) ? held.get(index) : 'not there')) };
}

/** Texts that came more often than damage makes them. */
function commonIn(told: readonly (string | undefined)[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const symbol of told) if (symbol !== undefined) counts.set(symbol, (counts.get(symbol) ?? 0) + 1);
  return [...counts].filter(([, count]) => count > Math.max(1, told.length * rare)).map(([symbol]) => symbol);
}

function mostAtRest(
  at: readonly number[],
  told: readonly (string | undefined)[],
  trials: readonly Trial[],
  trialOf: Int32Array,
): string | undefined {
  const counts = new Map<string, number>();
  let all = 0;
  for (const [i, index] of at.entries()) {
    const symbol = told[i];
    if (symbol === undefined || trials[trialOf[index] ?? -1]?.asked.kind !== 'rest') continue;
    all++;
    counts.set(symbol, (counts.get(symbol) ?? 0) + 1);
  }
  const [most] = [...counts].sort(([, a], [, b]) => b - a);
  return most && most[1] > all * 0.9 ? most[0] : undefined;
}

interface Told {
  readonly series: Series;
  readonly part: Part;
  readonly rest: string;
  readonly away: string;
  readonly at: readonly number[];
  readonly told: readonly (string | undefined)[];
  readonly trials: readonly Trial[];
  readonly trialOf: Int32Array;
  readonly others: readonly string[];
}

function answer({ series, part, rest, away, at, told, trials, trialOf, others }: Told): Answer {
  const left = trials.map(() => false);
  const awayIn = trials.map(() => 0);
  const returned = trials.map(() => true);
  let lines = 0;
  let odd = 0;
  let running = 0;
  let trialBefore = -1;
  let before: string | undefined;
  const held = at === series.at ? undefined : new Set(series.at);
  const isHeld = (index: number) => held === undefined || held.has(index);
  for (const [i, index] of at.entries()) {
    const symbol = told[i];
    const trial = trialOf[index] ?? -1;
    if (trial !== trialBefore) running = 0;
    if (trial !== trialBefore) before = undefined;
    trialBefore = trial;
    if (symbol === away) running++;
    else running = 0;
    // Where a line holds nothing of it, it may be a line of another kind.
    if ((symbol === rest || symbol === away) && isHeld(index)) lines++;
    else if (symbol !== rest && symbol !== away) odd++;
    if (trial < 0) continue;
    if (running >= 2) left[trial] = true;
    if (symbol === away) awayIn[trial] = (awayIn[trial] ?? 0) + 1;
    returned[trial] = symbol === rest || before === rest;
    before = symbol;
  }
  const stray = awayIn.reduce((sum, count, i) => (left[i] ? sum : sum + count), 0);
  // A word that stands for another switch says that this one is at rest.
  const elsewhere = part.kind === 'whole' ? others.filter((each) => each !== away) : [];
  return { series, part, rest: [rest, ...elsewhere], away: [away], left, returned, lines, odd, stray };
}

import { absent, mayBeMissing, type Part } from '../../model/stream-description.ts';
import type { Trial } from './observed.ts';
import { partsIn, rare } from './parts.ts';
import { type Run, runsAmong, runsOf } from './runs.ts';
import type { Column, Series } from './series.ts';

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
  /** Lines of its kind in which there was nothing by that name. */
  readonly missing: number;
  /** Lines away in trials that it did not leave: now and then damage, often another thing under the same name. */
  readonly stray: number;
}

const mostAway = 24;

/** Every two-valued thing of every series that had one state at rest and left it. `membersOf` gives the lines in which one might have been missing. */
export function answersIn(
  all: readonly Series[],
  trials: readonly Trial[],
  trialOf: Int32Array,
  membersOf: (series: Series) => readonly number[],
): readonly Answer[] {
  // Kinds of lines that share a column share what is found in it.
  const known = new Map<Column, ReturnType<typeof inColumn>>();
  return all.flatMap((series) => {
    const { column, field } = series;
    const found = known.get(column) ?? inColumn(field, column, trials, trialOf);
    known.set(column, found);
    const sets = found.sets.flatMap(({ part, symbols }) =>
      inPart(part, [...symbols, absent], runsAmong(column, membersOf(series), trialOf), trials),
    );
    return [...found.answers, ...sets].map((answer) => ({ series, ...answer }));
  });
}

/** What holds in every line of the column, and the parts that need to know in which lines the name is missing. */
function inColumn(field: string, column: Column, trials: readonly Trial[], trialOf: Int32Array) {
  const parts = partsIn(field, column);
  const runs = parts.length > 0 ? runsOf(column, trialOf) : [];
  return {
    answers: parts
      .filter(({ part }) => !mayBeMissing(part))
      .flatMap(({ part, symbols }) => inPart(part, symbols, runs, trials)),
    sets: parts.filter(({ part }) => mayBeMissing(part)),
  };
}

type Symbols = readonly (string | undefined)[];
type Found = Omit<Answer, 'series'>;

/** `symbols` gives what each text shows; where a name may be missing, the last of them is what stands for that. */
function inPart(
  part: Part,
  symbols: Symbols,
  runs: readonly Run[],
  trials: readonly Trial[],
): readonly Found[] {
  const shown = ({ value }: Run) => symbols[value < 0 ? symbols.length - 1 : value];
  const counts = new Map<string, number>();
  const atRest = new Map<string, number>();
  let all = 0;
  let resting = 0;
  for (const run of runs) {
    all += run.lines;
    const symbol = shown(run);
    if (symbol === undefined) continue;
    counts.set(symbol, (counts.get(symbol) ?? 0) + run.lines);
    if (trials[run.trial]?.asked.kind !== 'rest') continue;
    resting += run.lines;
    atRest.set(symbol, (atRest.get(symbol) ?? 0) + run.lines);
  }
  const [most] = [...atRest].sort(([, a], [, b]) => b - a);
  if (!most || most[1] <= resting * 0.9) return [];
  const [rest] = most;
  // Texts that came more often than damage makes them.
  const others = [...counts]
    .filter(([symbol, count]) => symbol !== rest && count > Math.max(1, all * rare))
    .map(([symbol]) => symbol);
  if (others.length > mostAway) return [];
  // What comes with hands off too tells of no switch.
  const neverAtRest = others.filter((symbol) => !atRest.has(symbol));
  return others
    .map((away) => answer({ part, rest, away, others: neverAtRest }, runs, shown, trials))
    .filter(({ left }) => left.some(Boolean));
}

interface Asked {
  readonly part: Part;
  readonly rest: string;
  readonly away: string;
  readonly others: readonly string[];
}

function answer(
  { part, rest, away, others }: Asked,
  runs: readonly Run[],
  shown: (run: Run) => string | undefined,
  trials: readonly Trial[],
): Found {
  const left = trials.map(() => false);
  const awayIn = trials.map(() => 0);
  const returned = trials.map(() => true);
  let lines = 0;
  let odd = 0;
  let missing = 0;
  let running = 0;
  let trialBefore = -1;
  let before: string | undefined;
  for (const run of runs) {
    const symbol = shown(run);
    const { trial } = run;
    if (trial !== trialBefore) {
      running = 0;
      before = undefined;
    }
    trialBefore = trial;
    running = symbol === away ? running + run.lines : 0;
    // Where a line holds nothing of it, it may be a line of another kind.
    if (symbol !== rest && symbol !== away) odd += run.lines;
    else if (run.value >= 0) lines += run.lines;
    else missing += run.lines;
    if (trial < 0) continue;
    if (running >= 2) left[trial] = true;
    if (symbol === away) awayIn[trial] = (awayIn[trial] ?? 0) + run.lines;
    returned[trial] = symbol === rest || (run.lines === 1 && before === rest);
    before = symbol;
  }
  const stray = awayIn.reduce((sum, count, i) => (left[i] ? sum : sum + count), 0);
  // A word that stands for another switch says that this one is at rest.
  const elsewhere = part.kind === 'whole' ? others.filter((each) => each !== away) : [];
  return { part, rest: [rest, ...elsewhere], away: [away], left, returned, lines, odd, missing, stray };
}

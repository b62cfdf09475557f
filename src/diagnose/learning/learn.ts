import type { AxisLetter, InputName } from '../../model/machine.ts';
import { type Answer, answersIn } from './answers.ts';
import { type Choice, rankedFor, togetherWith } from './choices.ts';
import { lineKindsOf } from './line-kinds.ts';
import { type AskedWindow, type HeardLine, type Trial, trialOfEach, trialsOf } from './observed.ts';
import { type Position, positionsOf, tracksIn } from './positions.ts';
import { type Series, seriesOf } from './series.ts';

/** What is known of one input: found in one place or in several that tie, or why it is not. */
export type FoundInput =
  | { readonly kind: 'found'; readonly choices: readonly [Choice, ...Choice[]] }
  /** Nothing in the stream changed when it was pressed. */
  | { readonly kind: 'not-in-stream' }
  /** Something follows it, and as well these others. */
  | { readonly kind: 'together'; readonly inputs: readonly InputName[]; readonly choices: readonly Choice[] }
  /** Something follows it, in so few presses that it may be chance. */
  | { readonly kind: 'too-few' }
  /** Things changed when it was pressed, and none of them followed the presses alone. */
  | { readonly kind: 'not-learned' };

export interface Learned {
  readonly trials: readonly Trial[];
  readonly inputs: ReadonlyMap<InputName, FoundInput>;
  readonly axes: ReadonlyMap<AxisLetter, readonly Position[]>;
  readonly activity: readonly Choice[];
  /** How many things in the stream varied in ways of their own. */
  readonly varied: number;
}

/** Finds in what was heard whatever followed what was asked. Lines and windows in order of time. */
export function learned(heard: readonly HeardLine[], windows: readonly AskedWindow[]): Learned {
  const trials = trialsOf(windows);
  const trialOf = trialOfEach(heard, trials);
  const kinds = lineKindsOf(heard);
  const everything = seriesOf(heard, kinds);
  const members = new Map(kinds.map(({ lines, members }) => [lines, members]));
  const anyAnswers = answersIn(everything, trials, trialOf, ({ lines }) => members.get(lines) ?? []);
  const inputs = namesOf(trials);
  const isKind = soundKinds(anyAnswers, inputs, trials);
  const answers = anyAnswers.filter(({ series }) => isKind(series));
  const all = everything.filter(isKind);
  const axes = [...new Set(trials.flatMap(({ asked }) => (asked.kind === 'move' ? [asked.axis] : [])))];
  const tracks = axes.length > 0 ? tracksIn(all, trials, trialOf) : [];
  return {
    trials,
    inputs: foundFor(inputs, answers, trials),
    axes: new Map(axes.map((axis) => [axis, positionsOf(axis, tracks, trials)])),
    activity: axes.length > 0 ? activityIn(answers, trials) : [],
    varied: new Set(answers.map(({ left }) => left.map(Number).join(''))).size,
  };
}

const namesOf = (trials: readonly Trial[]): readonly InputName[] => [
  ...new Set(trials.flatMap(({ asked }) => (asked.kind === 'press' ? [asked.input] : []))),
];

/**
 * What stands first in a line and changes with what is asked is no name of a kind of line: lines chosen by it would be those in
 * which some switch is at rest, and everything else would seem to follow another schedule in them.
 */
function soundKinds(
  answers: readonly Answer[],
  inputs: readonly InputName[],
  trials: readonly Trial[],
): (series: Series) => boolean {
  // In lines that a word beside it chooses too: of two ways to choose the same lines only the closer one is kept. A number may be any.
  const isLoose = ({ lines: { values = {} } }: Series) =>
    Object.values(values).every((text) => /[a-z]/i.test(text));
  const loose = answers.filter(({ series, part }) => part.kind === 'whole' && isLoose(series));
  const schedules = [...inputs.map((input) => isPressed(input)), isPressed(...inputs), isMoved];
  const following = schedules.flatMap((asked) => rankedFor(asked, loose, trials).choices);
  const fickle = new Set(
    following
      .flatMap((choice) => choice.answers)
      .flatMap(({ series: { field }, rest: [rest], away: [away] }) => [
        `${field} ${rest}`,
        `${field} ${away}`,
      ]),
  );
  return ({ lines: { values = {} } }) =>
    !Object.entries(values).some(([path, text]) => fickle.has(`${path} ${text}`));
}

const isPressed =
  (...names: readonly InputName[]) =>
  ({ asked }: Trial): boolean =>
    asked.kind === 'press' && names.includes(asked.input);
const isMoved = ({ asked }: Trial): boolean => asked.kind === 'move';

type Ranked = ReturnType<typeof rankedFor>;

function foundFor(
  inputs: readonly InputName[],
  answers: readonly Answer[],
  trials: readonly Trial[],
): ReadonlyMap<InputName, FoundInput> {
  const ranked = new Map(inputs.map((input) => [input, rankedFor(isPressed(input), answers, trials)]));
  const alone = inputs.filter((input) => isAnything(ranked.get(input)));
  const quiet = answers.filter(({ left }) =>
    trials.every(({ asked }, i) => asked.kind !== 'rest' || !left[i]),
  );

  const foundOf = (input: InputName): FoundInput => {
    const [first, ...more] = ranked.get(input)?.choices ?? [];
    if (first) return { kind: 'found', choices: [first, ...more] };
    if (ranked.get(input)?.tooFew) return { kind: 'too-few' };
    const others = togetherWith(input, answers, trials);
    // What also follows an input that has a place of its own is a summary, not a shared input.
    if (others.length > 0 && !others.some((each) => alone.includes(each))) {
      const { choices } = rankedFor(isPressed(input, ...others), answers, trials);
      return { kind: 'together', inputs: others, choices };
    }
    const changed = quiet.some(({ left }) => trials.some((trial, i) => isPressed(input)(trial) && left[i]));
    return { kind: changed ? 'not-learned' : 'not-in-stream' };
  };
  return new Map(inputs.map((input) => [input, foundOf(input)]));
}

const isAnything = (ranked: Ranked | undefined): boolean =>
  ranked !== undefined && (ranked.choices.length > 0 || ranked.tooFew);

/** What leaves its rest with every move, with nothing else, and comes back when the move is over. */
function activityIn(answers: readonly Answer[], trials: readonly Trial[]): readonly Choice[] {
  const comesBack = answers.filter(({ returned }) =>
    returned.every((each, i) => each || trials[i]?.asked.kind !== 'move'),
  );
  return rankedFor(isMoved, comesBack, trials).choices;
}

import type { AxisLetter, InputName } from '../../model/machine.ts';
import { type Answer, answersIn } from './answers.ts';
import { type Choice, rankedFor, togetherWith } from './choices.ts';
import { lineKindsOf } from './line-kinds.ts';
import { type AskedWindow, type HeardLine, type Trial, trialOfEach, trialsOf } from './observed.ts';
import { type Position, positionsOf, tracksIn } from './positions.ts';
import { seriesOf } from './series.ts';

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
  const all = seriesOf(heard, kinds);
  const members = new Map(kinds.map(({ lines, members }) => [lines, members]));
  const answers = answersIn(all, trials, trialOf, ({ lines }) => members.get(lines) ?? []);
  const inputs = namesOf(trials);
  const axes = [...new Set(trials.flatMap(({ asked }) => (asked.kind === 'move' ? [asked.axis] : [])))];
  const tracks = axes.length > 0 ? tracksIn(all, trials, trialOf) : [];
  return {
    trials,
    inputs: new Map(inputs.map((input) => [input, foundFor(input, answers, trials)])),
    axes: new Map(axes.map((axis) => [axis, positionsOf(axis, tracks, trials)])),
    activity: axes.length > 0 ? activityIn(answers, trials) : [],
    varied: new Set(answers.map(({ left }) => left.map(Number).join(''))).size,
  };
}

const namesOf = (trials: readonly Trial[]): readonly InputName[] => [
  ...new Set(trials.flatMap(({ asked }) => (asked.kind === 'press' ? [asked.input] : []))),
];

function foundFor(input: InputName, answers: readonly Answer[], trials: readonly Trial[]): FoundInput {
  const isOwn = ({ asked }: Trial) => asked.kind === 'press' && asked.input === input;
  const { choices, tooFew } = rankedFor(isOwn, answers, trials);
  const [first, ...more] = choices;
  if (first) return { kind: 'found', choices: [first, ...more] };
  if (tooFew) return { kind: 'too-few' };
  const inputs = togetherWith(input, answers, trials);
  if (inputs.length > 0) {
    const isAny = ({ asked }: Trial) =>
      asked.kind === 'press' && (asked.input === input || inputs.includes(asked.input));
    return { kind: 'together', inputs, choices: rankedFor(isAny, answers, trials).choices };
  }
  const quiet = (answer: Answer) => trials.every(({ asked }, i) => asked.kind !== 'rest' || !answer.left[i]);
  const changed = answers.some(
    (answer) => quiet(answer) && trials.some((trial, i) => isOwn(trial) && answer.left[i]),
  );
  return { kind: changed ? 'not-learned' : 'not-in-stream' };
}

/** What leaves its rest with every move, with nothing else, and comes back when the move is over. */
function activityIn(answers: readonly Answer[], trials: readonly Trial[]): readonly Choice[] {
  const comesBack = answers.filter(({ returned }) =>
    returned.every((each, i) => each || trials[i]?.asked.kind !== 'move'),
  );
  return rankedFor(({ asked }) => asked.kind === 'move', comesBack, trials).choices;
}

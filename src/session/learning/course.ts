import type { AxisLetter, InputName, Machine } from '../../model/machine.ts';
import type { StreamDescription, StreamRequest } from '../../model/stream-description.ts';
import { damageIn } from './damage.ts';
import { askForMoves } from './moves.ts';
import { askForPresses, showsNoInput } from './presses.ts';
import { previewOf } from './preview.ts';
import { type SettledInputs, settleInputs } from './settle-inputs.ts';
import { settleMeaning } from './settle-meaning.ts';
import { settleMotion } from './settle-motion.ts';
import { type Learning, type LearnScene, put } from './steps.ts';

export interface LearnOutcome {
  readonly description: StreamDescription;
  readonly settled: SettledInputs;
  /** Inputs the person could not press. */
  readonly refused: ReadonlySet<InputName>;
  readonly axesOpen: readonly AxisLetter[];
  readonly accepted: boolean;
  /** The person ended it before its end. */
  readonly stopped: boolean;
  /** Trials on which it rests. */
  readonly trials: number;
}

/** Everything a stream is learned from, in the order in which it is asked. Where nothing shows any input, no axis is moved for it. */
export function* learnCourse(scene: LearnScene, request: StreamRequest | undefined): Learning<LearnOutcome> {
  const { machine, study } = scene;
  const refused = yield* askForPresses(scene);
  const moved = showsNoInput(study) ? [] : yield* askForMoves(scene);
  // Questions come last: what the stream does while something moves may have answered them.
  const settled = yield* settleInputs(scene);
  const inputs = yield* settleMeaning(settled.bound);
  const motion = yield* settleMotion(scene);
  const axesOpen = machine.axes
    .map(({ letter }) => letter)
    .filter((letter) => !motion.axes.some((axis) => axis.letter === letter));
  const first: StreamDescription = {
    stream: machine.name,
    request,
    agree: 1,
    inputs,
    axes: motion.axes.filter(({ letter }) => moved.includes(letter)),
    activity: motion.activity,
  };
  const description: StreamDescription = { ...first, agree: damageIn(first, study.heard) ? 2 : 1 };
  const isAnything = description.inputs.length + description.axes.length > 0;
  const preview = isAnything ? previewOf(description, study.last) : [];
  const accepted =
    preview.length > 0 &&
    (yield* put({ action: 'confirm', topic: 'reads-right', shows: preview })).answer === 'yes';
  return {
    description,
    settled,
    refused,
    axesOpen,
    accepted,
    stopped: false,
    trials: study.learned().trials.length,
  };
}

/** What a stopped course leaves: nothing bound. */
export const nothingLearned = (
  { name, inputs, axes }: Machine,
  request: StreamRequest | undefined,
): LearnOutcome => ({
  description: { stream: name, request, agree: 1, inputs: [], axes: [], activity: undefined },
  settled: { bound: [], open: new Map(inputs.map((input) => [input.name, 'not-learned'])) },
  refused: new Set(),
  axesOpen: axes.map(({ letter }) => letter),
  accepted: false,
  stopped: true,
  trials: 0,
});

import type { Axis, AxisLetter } from '../../model/machine.ts';
import { type Learning, type LearnScene, put } from './steps.ts';

/** Two distances, so that nothing which only flips looks like a position; mm or degrees. */
const moves = [
  { direction: 'positive', distance: 4 },
  { direction: 'negative', distance: 3 },
] as const;

/** Asks to have each axis moved a little; gives the axes that were. */
export function* askForMoves({ machine }: LearnScene): Learning<readonly AxisLetter[]> {
  if (machine.axes.length === 0) return [];
  const { answer } = yield* put({ action: 'confirm', topic: 'ready-to-move' });
  if (answer !== 'yes') return [];
  const power = yield* put({ action: 'power', what: 'motors', to: 'on' });
  if (power.answer !== 'done') return [];
  const moved: AxisLetter[] = [];
  for (const axis of machine.axes) if (yield* moveBothWays(axis)) moved.push(axis.letter);
  return moved;
}

function* moveBothWays({ letter, kind }: Axis): Learning<boolean> {
  for (const { direction, distance } of moves) {
    const by = direction === 'positive' ? distance : -distance;
    const unit = kind === 'rotary' ? 'degrees' : 'mm';
    const action = { action: 'move', axis: letter, direction, distance, unit } as const;
    const { answer } = yield* put(action, 120, { kind: 'move', axis: letter, by });
    if (answer !== 'done') return false;
  }
  return true;
}

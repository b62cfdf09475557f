import { type InputName, switchOf } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { pressAtShortest, straysAtMost } from '../limits.ts';
import { answeringInput, type PressEvidence } from './press-evidence.ts';

/**
 * An input that moves now and then while other switches are pressed moves by itself: it flickers, whatever it did under its own
 * presses, and what it did under theirs is taken out. One that moves every time belongs to the switch pressed; one that moves for as
 * long as a press may have been pressed by mistake.
 */
export function withoutStrays(
  evidence: readonly PressEvidence[],
  scene: Scene,
): { readonly evidence: readonly PressEvidence[]; readonly flickering: readonly InputName[] } {
  const flickering = scene.streamInputs.filter((input) => strays(input, evidence, scene) > straysAtMost);
  if (flickering.length === 0) return { evidence, flickering };
  return {
    flickering,
    evidence: evidence.map((item) => {
      const own = switchOf(scene.machine, item.subject)?.input ?? '';
      if (flickering.includes(own)) return { ...item, flickers: true };
      const presses = item.presses.map((press) => ({
        ...press,
        moved: press.moved.filter((each) => !flickering.includes(each.input)),
      }));
      return { ...item, presses };
    }),
  };
}

/** Presses of other switches under which the input briefly moved, but not under all of the same switch's. */
function strays(input: InputName, evidence: readonly PressEvidence[], scene: Scene): number {
  return evidence.reduce((sum, item) => {
    const pressed = switchOf(scene.machine, item.subject);
    if (!pressed || pressed.input === input || answeringInput(item, pressed) === input) return sum;
    const moved = item.presses.filter((press) =>
      press.moved.some((each) => each.input === input && each.lastAt - each.firstAt < pressAtShortest),
    ).length;
    return moved < item.presses.length ? sum + moved : sum;
  }, 0);
}

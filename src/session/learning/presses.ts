import { type Input, type InputName, verticalAxes } from '../../model/machine.ts';
import { type Learning, type LearnScene, put } from './steps.ts';
import type { Study } from './study.ts';

/** Watched at rest before the first press, s: as many trials without a press as with one. */
const rest = 24;
const usualRounds = 2;
const mostRounds = 5;
/** After so many presses without any change a person is told, rather than kept pressing. */
const enoughToTell = 3;

/** Inputs whose presses the person could not or would not do. */
export type Refused = ReadonlySet<InputName>;

/**
 * Motors off, hands off, then each input pressed twice. Where so few presses could still be chance, or something slipped, those inputs
 * are asked for again. A stream in which nothing answers any press is not asked about for long.
 */
export function* askForPresses({ machine, study }: LearnScene): Learning<Refused> {
  const refused = new Set<InputName>();
  const off = yield* put({ action: 'power', what: 'motors', to: 'off' });
  const vertical = verticalAxes(machine);
  const propped =
    vertical.length === 0 ||
    (yield* put({ action: 'confirm', topic: 'propped', axes: vertical })).answer === 'yes';
  if (off.answer !== 'done' || !propped) return new Set(machine.inputs.map(({ name }) => name));
  yield* put({ action: 'hands-off' }, rest, { kind: 'rest' });
  let isSilent = false;
  for (let round = 1; round <= mostRounds; round++) {
    const wanted =
      round <= usualRounds ? machine.inputs : machine.inputs.filter(({ name }) => isUncertain(name));
    const left = wanted.filter(({ name }) => !refused.has(name));
    if (left.length === 0) break;
    for (const [i, input] of left.entries()) {
      if (!(yield* press(input, round))) refused.add(input.name);
      if (round > 1 || i + 1 !== Math.min(enoughToTell, left.length)) continue;
      isSilent = showsNoInput(study);
      if (isSilent && !(yield* shouldBeThere())) return refused;
    }
    if (round === 1 && isSilent && showsNoInput(study)) break;
    // Rest in between: what varies by itself shows itself.
    if (round <= usualRounds) yield* put({ action: 'hands-off' }, 6, { kind: 'rest' });
  }
  return refused;

  function* shouldBeThere(): Learning<boolean> {
    const shows = study.pressed;
    return (yield* put({ action: 'confirm', topic: 'nothing-changed', shows })).answer === 'yes';
  }

  function isUncertain(name: InputName): boolean {
    const found = study.learned().inputs.get(name);
    return found?.kind === 'too-few' || (found?.kind === 'not-learned' && study.learned().varied > 0);
  }
}

/** Whether nothing changed under any press so far. */
export function showsNoInput(study: Study): boolean {
  const found = [...study.learned().inputs.values()];
  return found.length > 0 && found.every(({ kind }) => kind === 'not-in-stream');
}

/** False where the person did not do it. */
function* press({ name, switches: [first] }: Input, round: number): Learning<boolean> {
  const { answer } = yield* put(
    { action: 'press', subject: first.subject, round, rounds: usualRounds, expect: 'answer', deaf: [] },
    60,
    { kind: 'press', input: name },
  );
  return answer !== 'cannot' && answer !== 'skip';
}

import type { Ask } from '../../model/ask.ts';
import type { SearchOrder } from '../../model/cause-facts.ts';
import { knownOnly } from '../../model/known-only.ts';
import { switchOf } from '../../model/machine.ts';
import type { Check, Procedure, Scene } from '../../model/procedure.ts';
import { timeToPlug } from '../limits.ts';
import { untilUnbroken } from '../procedures/motors-off.ts';

/** Before the re-test: is what was named mended? Without a yes the re-test would only show the fault once more. */
export const mended = ({ subject }: SearchOrder): Check<{ readonly isMended: boolean }> => ({
  name: 'troubleshoot',
  gather: (scene) => gather(subject, scene),
  judge: () => [],
  teaches: (items) =>
    items.every(({ isMended }) => isMended) ? {} : { motorsOff: false, handsOff: 'not-mended' },
});

function* gather(subject: string, scene: Scene): Procedure<{ readonly isMended: boolean }> {
  const { causes, beside } = scene.known;
  if (!causes || !switchOf(scene.machine, subject)) return;
  if (scene.out && scene.out.length > 0) {
    yield { keep: { isMended: false } };
    return;
  }
  // Where it may be that nothing is wrong, there is nothing to mend first: the re-test is one more look.
  if (causes.some((each) => each.length === 0)) return;
  const ask = { check: 'troubleshoot', action: 'confirm', topic: 'mended', subject, causes } as const;
  const whole = { ...ask, ...knownOnly({ beside }), seconds: timeToPlug } as Ask;
  const ended = yield* untilUnbroken(whole, { status: scene.now });
  yield { keep: { isMended: ended.answer === 'yes' } };
}

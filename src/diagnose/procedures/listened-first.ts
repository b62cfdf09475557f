import type { InputName } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { CheckName } from '../../model/verdict.ts';
import { flickerAtRest, quietFirst } from '../limits.ts';
import { excursions } from '../signal/excursion.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/** Where nobody has listened to the inputs at rest yet, a short while with hands off comes first. Returns those that flicker. */
export function* listenedFirst(check: CheckName, scene: Scene, latest: Latest): Asking<readonly InputName[]> {
  if (scene.known.restHeard) return [];
  const { window } = yield* untilUnbroken({ check, action: 'hands-off', seconds: quietFirst }, latest);
  return excursions(window)
    .filter(({ edges }) => edges >= flickerAtRest)
    .map(({ input }) => input);
}

import type { Mm } from '../../model/units.ts';
import type { HomingCycle } from './cycle.ts';

/** Whether the controller did anything about its input: that it reports one does not mean that it acts on it. */
export type Reaction = 'acted' | 'not-acted-on' | 'not-tested';

/**
 * What the controller did when the switch was operated: it turned, stopped or went into fault; or it went on the same way by more than `mayRunOn` mm, the
 * way a stop takes at most. Not tested where no trip was seen, or where the stream broke off.
 */
export function reactionOf({ trip, backOff, stopDistance, ends }: HomingCycle, mayRunOn: Mm): Reaction {
  if (!trip || ends === 'gap') return 'not-tested';
  if ((stopDistance?.low ?? 0) > mayRunOn) return 'not-acted-on';
  if (backOff || ends === 'fault') return 'acted';
  return ends === 'still' ? 'acted' : 'not-tested';
}

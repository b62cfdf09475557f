import type { PlugEnd } from '../../model/ask.ts';
import type { Switch } from '../../model/machine.ts';
import type { CheckName } from '../../model/verdict.ts';
import { timeToPlug } from '../limits.ts';
import { type Asking, type Latest, put } from './asking.ts';

/** A sensor's return is never lifted alone: its supply could then find its way through the input. */
const conductorOf = ({ sensor }: Switch) =>
  sensor === 'contact' || sensor === 'unknown' ? ('signal plug' as const) : ('whole sensor plug' as const);

export const unplugAsk = (pressed: Switch, at: PlugEnd, again: boolean, check: CheckName = 'open-wire') =>
  ({
    check,
    action: 'unplug',
    subject: pressed.subject,
    at,
    conductor: conductorOf(pressed),
    seconds: timeToPlug,
    ...(again && { again: true as const }),
  }) as const;

/** `broke-off`: back, but the stream was interrupted on the way and the levels before it no longer count. */
export type PutBack = 'back' | 'refused' | 'broke-off';
export type PutBackWhy = 'wrong-plug' | 'still-out' | 'stream-says-out' | undefined;

/** Asks for a plug to be put back. Said to be back is not proved: the press after it shows. */
export function* putBack(
  pressed: Switch,
  at: PlugEnd,
  why: PutBackWhy,
  latest: Latest,
  check: CheckName = 'open-wire',
): Asking<PutBack> {
  const { subject } = pressed;
  const conductor = conductorOf(pressed);
  let broke = false;
  for (;;) {
    const ask = {
      check,
      action: 'replug',
      subject,
      at,
      conductor,
      seconds: timeToPlug,
    } as const;
    const ended = yield* put({ ...ask, ...(why && { why }) }, latest);
    if (ended.by === 'gap') broke = true;
    else if (ended.answer !== 'done') return 'refused';
    else return broke ? 'broke-off' : 'back';
  }
}

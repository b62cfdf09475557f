import type { PlugEnd } from '../../model/ask.ts';
import type { Switch } from '../../model/machine.ts';
import type { CheckName, Missing } from '../../model/verdict.ts';
import { highestPlugVoltage, timeToAnswer } from '../limits.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/**
 * Nobody is asked to pull a plug out of reach, one whose voltage is unknown, or one above the limit. Where the file says nothing
 * of a voltage, the person first says that it is a signal plug of low voltage. Returns where to pull, or what forbids it.
 */
export function* mayUnplug(
  check: CheckName,
  { subject, reach, voltage }: Switch,
  latest: Latest,
): Asking<PlugEnd | Missing> {
  if (reach === 'never') return 'out-of-reach';
  if (voltage.known === 'told-unknown') return 'voltage-unknown';
  if (voltage.known === 'volts' && voltage.volts > highestPlugVoltage) return 'voltage-too-high';
  const at = reach === 'controller only' ? 'controller' : 'switch';
  if (voltage.known === 'volts') return at;
  const ask = { check, action: 'confirm', topic: 'signal-plug', subject, at, seconds: timeToAnswer } as const;
  const confirmed = yield* untilUnbroken(ask, latest);
  if (confirmed.answer === 'skip') return 'skipped';
  return confirmed.answer === 'yes' ? at : 'plug-not-confirmed';
}

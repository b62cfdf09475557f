import type { SignalEvent } from '../../model/signal-event.ts';
import { csvLine } from '../csv-line.ts';

/** Every change of every input as CSV, piece by piece. Times are ms since the session began; a break has no input. */
export function* edges(events: Iterable<SignalEvent>): Generator<string> {
  yield csvLine(['at_ms', 'heard_ms', 'event', 'input', 'level', 'active']);
  for (const event of events) {
    const times = [event.at.toFixed(3), event.arrived.toFixed(3)];
    yield event.kind === 'change'
      ? csvLine([...times, 'change', event.input, event.level, event.active])
      : csvLine([...times, event.why, undefined, undefined, undefined]);
  }
}

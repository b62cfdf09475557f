import type { Ask, PressAsk } from '../../model/ask.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Ended } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import { rowAttempts, timeToPress } from '../limits.ts';
import { excursions } from '../signal/excursion.ts';
import { agree, stateIn } from '../signal/track.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';

/**
 * A press that begins at rest. Where the stream or the session broke off, a hand may still be on the switch or a stop button still
 * in: letting go would then be taken for the press. Such a press does not count, and is asked again once the switch is let go.
 */
export function* pressFromRest(
  ask: Extract<Ask, PressAsk>,
  { subject, input, duty }: Switch,
  latest: Latest,
): Asking<Ended | 'not-from-rest'> {
  const expected = latest.status ?? latest.before;
  for (let attempt = 1; ; attempt++) {
    const ended = yield* put(ask, latest);
    const concerned = new Set([input, ...excursions(ended.window, ask.deaf).map((each) => each.input)]);
    const wrong = [...concerned].filter((each) => differs(ended.window.lead, expected, each));
    if (ended.by === 'gap') latest.before = expected;
    if (ended.by === 'gap' || refusal(ended) || wrong.length === 0) return ended;
    if (attempt === rowAttempts) return 'not-from-rest';
    const watch = wrong.filter((each) => differs(latest.status, expected, each));
    const why = duty.includes('stop') ? 'latched' : 'held';
    if (watch.length > 0)
      yield* put({ check: ask.check, action: 'release', subject, watch, why, seconds: timeToPress }, latest);
  }
}

function differs(
  status: StatusReading | undefined,
  expected: StatusReading | undefined,
  input: InputName,
): boolean {
  const is = status && stateIn(status, input);
  const rests = expected && stateIn(expected, input);
  return is !== undefined && rests !== undefined && !agree(is, rests);
}

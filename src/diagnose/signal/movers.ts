import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { StatusReading } from '../../model/reading.ts';
import { tellsTheSame } from './track.ts';

/** Windows do not change; what was read out of one is kept with it. */
const known = new WeakMap<Window, ReadonlySet<InputName>>();

/**
 * The inputs of which anything in a window differs from what was said before, if only that less is known. All others said the same
 * from the first report to the last, so whoever looks for changes need not follow them: of nine inputs one moves.
 */
export function movers(window: Window): ReadonlySet<InputName> {
  const found = known.get(window) ?? moversIn(window);
  known.set(window, found);
  return found;
}

function moversIn({ lead, readings }: Window): ReadonlySet<InputName> {
  const found = new Set<InputName>();
  let before = lead;
  for (const reading of readings) {
    if (reading.kind === 'edge') found.add(reading.input);
    if (reading.kind !== 'status') continue;
    if (before !== undefined) addDifferent(found, before, reading);
    before = reading;
  }
  return found;
}

function addDifferent(found: Set<InputName>, before: StatusReading, now: StatusReading): void {
  if (tellsTheSame(before, now)) return;
  if (before.inputs !== now.inputs) {
    for (const input of [...before.inputs, ...now.inputs]) found.add(input);
    return;
  }
  for (const [i, input] of now.inputs.entries())
    if (before.levels[i] !== now.levels[i] || before.active[i] !== now.active[i]) found.add(input);
}

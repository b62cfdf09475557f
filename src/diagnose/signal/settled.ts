import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import type { Millis } from '../../model/units.ts';
import { flickerWhenOut, holdsFor, holdsOver } from '../limits.ts';
import { changes } from './excursion.ts';
import { agree, type State, track } from './track.ts';

/** The level an input came to after something was done to it: it held, it would not hold, or there was too little to tell. */
export type Settled =
  | { readonly kind: 'holds'; readonly state: State }
  | { readonly kind: 'flickers'; readonly edges: number }
  | { readonly kind: 'unknown' };

/**
 * A level counts only if it holds for a second and ten reports after the person said it was done: what a hand does to a plug on
 * the way is no level.
 */
export function settledState(window: Window, input: InputName, answeredAt: Millis | undefined): Settled {
  const since = answeredAt ?? window.from;
  const all = track(window, input);
  const after = all.filter((sample) => sample.arrived >= since);
  const edges = changes(after).length;
  if (edges >= flickerWhenOut) return { kind: 'flickers', edges };
  const last = after.at(-1);
  if (!last) return { kind: 'unknown' };
  const broken = after.findLastIndex((sample) => !agree(sample, last));
  const held = after.slice(broken + 1).filter((sample) => sample.from === 'status');
  if (isHeldLongEnough(held.map(({ arrived }) => arrived))) return { kind: 'holds', state: last };
  return edges > 0 && held.length >= holdsOver ? { kind: 'flickers', edges } : { kind: 'unknown' };
}

/** Whether reports at these times, oldest first, are enough for a level to have held over them. */
export function isHeldLongEnough(reports: readonly Millis[]): boolean {
  const [first, last] = [reports[0], reports.at(-1)];
  if (first === undefined || last === undefined) return false;
  return reports.length >= holdsOver && last - first >= holdsFor * 0.9;
}

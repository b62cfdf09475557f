import type { Millis } from '../../model/units.ts';
import type { Glyphs } from './glyphs.ts';
import { type LiveInput, stripSpan } from './live-inputs.ts';

/** The last half minute of one input as a row of cells, the newest at the right end: low where quiet, high where active. */
export function edgeStrip(
  { changes }: Pick<LiveInput, 'changes'>,
  now: Millis,
  cells: number,
  { strip }: Glyphs,
): string {
  const each = stripSpan / cells;
  return Array.from({ length: cells }, (_, i) => {
    const from = now - stripSpan + i * each;
    const heard = statesWithin(changes, from, from + each);
    const on = heard.has(true);
    if (on && heard.has(false)) return strip.both;
    return on ? strip.active : heard.has(false) ? strip.quiet : ' ';
  }).join('');
}

/** Every state an input had at some moment of [from, to). */
function statesWithin(changes: LiveInput['changes'], from: number, to: number): Set<boolean | undefined> {
  const states = new Set<boolean | undefined>();
  for (const [i, change] of changes.entries()) {
    const until = changes[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    if (change.at < to && until > from) states.add(change.on);
  }
  return states;
}

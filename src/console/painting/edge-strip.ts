import type { Millis } from '../../model/units.ts';
import type { Glyphs } from './glyphs.ts';
import { type LiveInput, stripSpan } from './live-inputs.ts';

/** More changes than this within one cell are not a press: bounce, chatter, noise. */
const ofAPress = 2;

/** The last half minute of one input as a row of cells, the newest at the right end: low where quiet, high where active, hatched where it flickers. */
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
    if (heard.length > ofAPress + 1) return strip.flickers;
    if (heard.includes(true)) return strip.active;
    return heard.includes(false) ? strip.quiet : ' ';
  }).join('');
}

/** The states an input had one after another within [from, to). */
const statesWithin = (changes: LiveInput['changes'], from: number, to: number): (boolean | undefined)[] =>
  changes
    .filter(({ at }, i) => at < to && (changes[i + 1]?.at ?? Number.POSITIVE_INFINITY) > from)
    .map(({ on }) => on);

import type { HeardLine } from '../../diagnose/learning/observed.ts';
import type { StreamDescription } from '../../model/stream-description.ts';
import { compiled } from '../../transport/stream/description/compiled.ts';

/** So many of a thousand lines may be unreadable before damage is taken to be usual on this link. */
const usual = 0.001;

/** Whether lines arrive damaged: where they do, one report alone is not believed. */
export function damageIn(description: StreamDescription, heard: readonly HeardLine[]): boolean {
  const readLine = compiled(description);
  let meant = 0;
  let wrong = 0;
  for (const line of heard) {
    const said = readLine(line);
    if (said === undefined) continue;
    meant++;
    if (
      said === 'wrong' ||
      [...said.inputs.values()].some((state) => state.level === '?' && state.active === '?')
    )
      wrong++;
    else if ([...said.axes.values()].some((position) => position === undefined)) wrong++;
  }
  return wrong > Math.max(1, meant * usual);
}

import type { HeardLine } from '../../diagnose/learning/observed.ts';
import type { StreamDescription } from '../../model/stream-description.ts';
import { compiled } from '../../transport/stream/description/compiled.ts';

/** So many of a thousand lines may be unreadable before damage is taken to be usual on this link. */
const usual = 0.001;

/** A make-up of names that came no oftener than this is no kind of report; of a thousand lines so many may be of such. */
const seldom = 2;
const odd = 0.002;

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
  return wrong > Math.max(1, meant * usual) || seldomAlike(heard) > Math.max(3, heard.length * odd);
}

/** How many lines have names that hardly any other has: a wrong byte in a line often leaves nothing of it that is described. */
function seldomAlike(heard: readonly HeardLine[]): number {
  // Lines met before share their fields.
  const times = new Map<HeardLine['fields'], number>();
  for (const { fields } of heard) times.set(fields, (times.get(fields) ?? 0) + 1);
  const alike = new Map<string, number>();
  for (const [fields, count] of times) {
    const names = fields.map(({ path }) => path).join(' ');
    alike.set(names, (alike.get(names) ?? 0) + count);
  }
  return [...alike.values()].reduce((sum, count) => (count > seldom ? sum : sum + count), 0);
}

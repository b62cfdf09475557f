import type { CauseFacts, SearchOrder, Told } from '../../model/cause-facts.ts';
import { isMeterDeed } from '../../model/deed-names.ts';
import { inputOf, type Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Surroundings } from '../troubleshooting/imagined.ts';
import { forbids } from './allowed.ts';
import type { Candidates } from './candidates.ts';
import type { Learnt } from './conclude.ts';
import { prospectFor } from './prospects.ts';
import { Search } from './search.ts';
import type { Site } from './site.ts';

type Where = Pick<Site, 'of' | 'told'> & { readonly scene: Pick<Scene, 'machine'> };

/** The search as it stands before anything is known. */
export function beginSearch(
  order: Pick<SearchOrder, 'history' | 'stopProved'>,
  { of, scene: { machine }, told }: Where,
  candidates: Candidates,
  isFree = false,
): Search {
  const around = surroundingsOf(told, of, machine);
  const [first, ...others] = candidates.wirings.map((wiring) => prospectFor(wiring, order.history, around));
  if (!first) throw new RangeError('A switch has at least one wiring that is thought of.');
  const by = { machine, of, candidates, order };
  return Search.begin([first, ...others], ({ name }) => isFree || forbids(name, by) === undefined);
}

/** More than these no one reads. */
const toldAtMost = 5;

/** Deeds that would still tell something and may not be asked for here, with what forbids each. */
export function blocked(
  order: Pick<SearchOrder, 'history' | 'stopProved'>,
  where: Where,
  candidates: Candidates,
  { learnt, notDone }: { readonly learnt: readonly Learnt[]; readonly notDone: CauseFacts['notDone'] },
): CauseFacts['notDone'] {
  const by = { machine: where.scene.machine, of: where.of, candidates, order };
  let search = beginSearch(order, where, candidates, true);
  for (const { deed, outcome } of learnt) search = search.learnt(deed, outcome);
  for (const { deed, why } of notDone)
    search = search.ruledOut(deed, why === 'cannot' && isMeterDeed(deed) ? 'meter' : undefined);
  const found: CauseFacts['notDone'][number][] = [];
  while (found.length < toldAtMost) {
    const next = search.next();
    if (!next.trial) break;
    const deed = next.trial.name;
    const why = forbids(deed, by);
    if (why) found.push({ deed, why });
    search = next.search.ruledOut(deed);
  }
  return found;
}

/** What surrounds a switch, as far as the machine file tells it. */
export const surroundingsOf = (told: Told, of: Switch, machine: Scene['machine']): Surroundings => ({
  told,
  otherEnd: hasOtherEnd(of, machine),
  ...(machine.polarity === 'each' && { polarityEach: true }),
});

/** The other end of the switch's axis has an input of its own. */
const hasOtherEnd = (of: Switch, machine: Scene['machine']): boolean =>
  of.axis !== undefined &&
  machine.inputs.some(
    ({ name, switches }) =>
      name !== of.input && switches.some(({ axis, end }) => axis === of.axis && end !== of.end),
  ) &&
  inputOf(machine, of.input)?.joined === 'single';

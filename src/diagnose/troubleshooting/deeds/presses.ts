import { held } from '../../../model/every-outcome.ts';
import {
  type Beside,
  besides,
  bounces,
  jumps,
  type Neighbouring,
  type Own,
  type Push,
  stays,
  still,
  to,
} from '../../../model/outcomes.ts';
import type { Actuation, State } from '../../circuit/state.ts';
import { worked } from '../../fault-finding/traits.ts';
import type { DeedOf } from '../deed.ts';
import type { Imagined } from '../imagined.ts';
import { chancesIn, joined, mixed, type Odds, sure } from '../odds.ts';

/** How often bounce that gets through is seen in the reports at all; and how often a worn contact bounces longer than a sound filter waits. */
const bounceIsSeen = 0.6;
const bouncesLong = 0.03;

const pushed = (scene: Imagined, actuation: Actuation): Odds<Own> => {
  const before = scene.glimpse();
  const letGo = JSON.stringify(scene.glimpse({ actuation: 'let go' }));
  const during = scene.glimpse({ actuation });
  const sticks = letGo === JSON.stringify(during) && letGo !== JSON.stringify(before);
  const through =
    actuation !== 'pressed by hand' ? 0 : scene.look({ actuation }).chatters ? bounceIsSeen : bouncesLong;
  const own = joined(before, during, (one, other): Own => {
    if (one === jumps) return jumps;
    if (other === jumps) return jumps;
    return one === other ? still : sticks ? stays(other) : to(other);
  });
  return through === 0
    ? own
    : mixed(
        chancesIn(own).map(([key, chance]) => {
          const bounced = withBounce.get(key);
          const cleanly: Odds<Own> = sure(key);
          return [
            chance,
            bounced === undefined
              ? cleanly
              : mixed([
                  [1 - through, cleanly],
                  [through, sure(bounced)],
                ]),
          ] as const;
        }),
      );
};

/** What a clean answer looks like where bounce gets through. */
const withBounce: ReadonlyMap<Own, Own> = new Map(held.map((each) => [to(each), bounces(each)]));

/** Faults that make another input answer; of crossed ends it is always the other end of the axis. */
function besideOf(scene: Imagined, change: Partial<State>): Odds<Beside> {
  const before = scene.look().neighbour;
  const now = scene.look(change).neighbour;
  if (before === undefined || now === undefined || before === now) return sure('no other');
  if (scene.has('ends-swapped')) return sure('other end');
  return scene.around.otherEnd ? { 'other end': 0.3, another: 0.7 } : sure('another');
}

const push =
  (actuation: Actuation) =>
  (scene: Imagined): Odds<Push> =>
    joined(pushed(scene, actuation), besideOf(scene, { actuation }), besides);

/** A push that slips off shows as none, or as one that came and went. */
const slippedOff: readonly Own[] = [still, jumps];

export const press = {
  name: 'press',
  kind: 'hands',
  minutes: 1,
  mistaken: 0.02,
  slipsTo: slippedOff,
  applies: () => true,
  odds: push('pressed by hand'),
} as const satisfies DeedOf<'press'>;

export const tap = {
  name: 'tap',
  kind: 'hands',
  minutes: 0.7,
  mistaken: 0.03,
  slipsTo: slippedOff,
  applies: () => true,
  odds: push('tapped'),
} as const satisfies DeedOf<'tap'>;

/** The machine's own dog or target, moved by hand with the drives off. */
export const carriage = {
  name: 'carriage',
  kind: 'hands',
  minutes: 3,
  mistaken: 0.03,
  slipsTo: slippedOff,
  applies: worked,
  odds: push('pressed by machine'),
} as const satisfies DeedOf<'carriage'>;

/** A neighbouring switch is pressed: does its own input answer, this one, a third? */
export const neighbour = {
  name: 'neighbour',
  kind: 'hands',
  minutes: 1,
  mistaken: 0.02,
  applies: () => true,
  odds: (scene) => {
    if (scene.has('plug-shifted')) return { third: 0.85, none: 0.1, own: 0.05 };
    const change = { neighbour: 'pressed' } as const;
    const [before, now] = [scene.look().neighbour, scene.look(change).neighbour];
    const its = before === undefined || now !== before;
    return joined(scene.glimpse(), scene.glimpse(change), (one, other): Neighbouring => {
      if (one === jumps || other === jumps) return jumps;
      return one === other ? (its ? 'own' : 'none') : its ? 'both' : 'this one';
    });
  },
} as const satisfies DeedOf<'neighbour'>;

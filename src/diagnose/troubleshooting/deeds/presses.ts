import type { Actuation, State } from '../../circuit/state.ts';
import { worked } from '../../fault-finding/traits.ts';
import type { Deed } from '../deed.ts';
import { jumps } from '../glimpse.ts';
import type { Imagined } from '../imagined.ts';
import { joined, mixed, type Odds, sure } from '../odds.ts';

/** What a push and a letting go can look like; after `to` comes the glimpse of the pressed state. */
export const still = 'still';
export const to = (glimpse: string): string => `to ${glimpse}`;
export const stays = (glimpse: string): string => `to ${glimpse}, stays`;
export const bounces = (glimpse: string): string => `to ${glimpse}, bounces`;
/** Which other input answered beside it. */
export const besides = (own: string, beside: 'no other' | 'another' | 'other end'): string =>
  beside === 'no other' ? own : `${own}; ${beside}`;

/** How often bounce that gets through is seen in the reports at all; and how often a worn contact bounces longer than a sound filter waits. */
const bounceIsSeen = 0.6;
const bouncesLong = 0.03;

const pushed = (scene: Imagined, actuation: Actuation): Odds => {
  const before = scene.glimpse();
  const letGo = JSON.stringify(scene.glimpse({ actuation: 'let go' }));
  const during = scene.glimpse({ actuation });
  const sticks = letGo === JSON.stringify(during) && letGo !== JSON.stringify(before);
  const through =
    actuation !== 'pressed by hand' ? 0 : scene.look({ actuation }).chatters ? bounceIsSeen : bouncesLong;
  const own = joined(before, during, (one, other) => {
    if (one === jumps) return jumps;
    if (other === jumps) return jumps;
    return one === other ? still : sticks ? stays(other) : to(other);
  });
  return through === 0
    ? own
    : mixed(
        Object.entries(own).map(([key, chance]) => {
          const cleanly = key.startsWith('to ') && !key.endsWith('stays');
          return [
            chance,
            cleanly ? { [key]: 1 - through, [`${key}, bounces`]: through } : sure(key),
          ] as const;
        }),
      );
};

/** Faults that make another input answer; of crossed ends it is always the other end of the axis. */
function besideOf(scene: Imagined, change: Partial<State>): Odds {
  const before = scene.look().neighbour;
  const now = scene.look(change).neighbour;
  if (before === undefined || now === undefined || before === now) return sure('no other');
  if (scene.has('ends-swapped')) return sure('other end');
  return scene.around.otherEnd ? { 'other end': 0.3, another: 0.7 } : sure('another');
}

const push =
  (actuation: Actuation) =>
  (scene: Imagined): Odds =>
    joined(pushed(scene, actuation), besideOf(scene, { actuation }), (own, beside) =>
      besides(own, beside as Parameters<typeof besides>[1]),
    );

/** A push that slips off shows as none, or as one that came and went. */
const slippedOff: readonly string[] = [still, jumps];

export const press = {
  name: 'press',
  kind: 'hands',
  minutes: 1,
  mistaken: 0.02,
  slipsTo: slippedOff,
  applies: () => true,
  odds: push('pressed by hand'),
} as const satisfies Deed;

export const tap = {
  name: 'tap',
  kind: 'hands',
  minutes: 0.7,
  mistaken: 0.03,
  slipsTo: slippedOff,
  applies: () => true,
  odds: push('tapped'),
} as const satisfies Deed;

/** The machine's own dog or target, moved by hand with the drives off. */
export const carriage = {
  name: 'carriage',
  kind: 'hands',
  minutes: 3,
  mistaken: 0.03,
  slipsTo: slippedOff,
  applies: worked,
  odds: push('pressed by machine'),
} as const satisfies Deed;

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
    const own = joined(scene.glimpse(), scene.glimpse(change), (one, other) =>
      one === jumps || other === jumps ? jumps : one === other ? 'no' : 'yes',
    );
    const [before, now] = [scene.look().neighbour, scene.look(change).neighbour];
    const its = before === undefined || now !== before;
    return mixed(
      Object.entries(own).map(([key, chance]) => [
        chance,
        sure(key === jumps ? jumps : key === 'yes' ? (its ? 'both' : 'this one') : its ? 'own' : 'none'),
      ]),
    );
  },
} as const satisfies Deed;

import { ms } from '../../model/units.ts';
import { onDog } from './axis-fault.ts';
import type { Fault } from './fault.ts';

/** mm a loose dog slips outwards each time it has worked its switch, and how far a loose bracket wanders to either side. */
const slips: readonly [number, number] = [0.15, 0.35];
const wanders = 0.5;

/** What can be wrong where a dog meets its switch. */
export const dogFaults = {
  'beyond-dog': onDog('its dog is short, and the axis stands past it against the metal', (dog, axis) => {
    dog.length = 1.5;
    const [low, high] = axis.truth.stops;
    axis.moveTo(dog.outwards === 1 ? high - 0.5 : low + 0.5);
  }),
  'late-release': onDog('it lets go only farther back than the axis backs off', (dog, axis) => {
    dog.frees = dog.actuates - dog.outwards * axis.homing.backOff * 1.6;
  }),
  'dog-slips': onDog('its dog is loose and slips outwards a little at each trip', (dog, _, found, world) => {
    const random = world.random(`slips ${found.contact.truth.subject}`);
    dog.shifts = () => random.within(...slips);
  }),
  'bracket-loose': onDog(
    'its bracket is loose: it trips here and there, within a millimetre',
    (dog, _, found, world) => {
      const random = world.random(`bracket ${found.contact.truth.subject}`);
      let off = 0;
      dog.shifts = () => {
        const before = off;
        off = random.within(-wanders, wanders);
        return off - before;
      };
    },
  ),
  'lost-at-speed': onDog(
    'its dog is short and the filter of its input long: at approach speed the trip is over before it counts',
    (dog, { homing }, { stage }) => {
      dog.length = 3;
      stage.debounce = ms(((dog.length / homing.approach) * 1000 * 3) / 2);
    },
  ),
  'flutters-slow': onDog(
    'its blades have no snap: worked slowly they never settle',
    (_, axis, { contact }) => {
      contact.fluttersBelow = axis.homing.slow * 1.5;
    },
  ),
  'at-other-end': onDog('it stands at the other end of its axis than the file says', (dog, axis) => {
    const [low, high] = axis.truth.stops;
    dog.actuates = low + high - dog.actuates;
    dog.frees = low + high - dog.frees;
    dog.outwards = dog.outwards === 1 ? -1 : 1;
    axis.moveTo(axis.stands);
  }),
} satisfies Record<string, Fault>;

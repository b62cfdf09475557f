import { type Level, levelsIn } from '../circuit/level.ts';
import type { Network } from '../circuit/network.ts';
import type { PinLimits } from '../circuit/pin-limits.ts';
import { responseOf } from '../circuit/response.ts';
import { neighbourOf, type Rig, soundRig, standing } from '../circuit/rig.ts';
import { type State, tapLasts } from '../circuit/state.ts';
import { nominalWorld, type Wiring, type World } from '../circuit/wiring.ts';
import type { Fault } from './fault.ts';

/** What the controller makes of the input in one state. */
export interface Seen {
  /** `flickers`: the state itself jumps between levels. */
  readonly level: Level | 'flickers';
  /** After the setting: what the stream tells. `uncertain` and `unsteady` depend on the unit, or on nothing at all. */
  readonly reported: Reported;
  /** What the input beside it reads, where a fault reaches it. */
  readonly neighbour: Level | 'flickers' | undefined;
  /** A press shows as several edges: nothing hides the bounce of the contact. */
  readonly chatters: boolean;
}
export type Reported = 'active' | 'inactive' | 'uncertain' | 'unsteady';

/** Contacts bounce up to about this long, ms; a filter below lets bounce through (J. Ganssle, A Guide to Debouncing; from memory: mean 1.6 ms). */
const bounceLasts = 1;

/** The rigs an input jumps between with these faults in it, in this state; one where nothing jumps. */
export function rigsWith(
  wiring: Wiring,
  state: State,
  faults: readonly Fault[],
  world: World,
): readonly Rig[] {
  const scene = { wiring, world, state };
  return faults.reduce<readonly Rig[]>(
    (rigs, { alters }) => rigs.flatMap((rig) => alters(rig, scene)),
    [soundRig(wiring, world)],
  );
}

/** What is read in a state, with any number of faults at once. Pure: the same for the same arguments. `levels`: how networks are solved, or remembered. */
export function readingOf(
  wiring: Wiring,
  state: State,
  faults: readonly Fault[],
  world: World = nominalWorld(wiring),
  levels: typeof levelsIn = levelsIn,
): Seen {
  const limits = wiring.template.limits(world.numbers, wiring.family);
  const rigs = rigsWith(wiring, state, faults, world);
  const found = rigs.map((rig) => levelsOf(rig, state, wiring, world, limits, levels));
  const level = oneOf(found.map(({ own }) => own));
  const beside = found.flatMap(({ neighbour }) => (neighbour === undefined ? [] : [neighbour]));
  return new Look(
    level,
    reportedAs(level, rigs[0], wiring),
    beside.length === 0 ? undefined : oneOf(beside),
    () => rigs.some((rig) => letsBounceThrough(rig, wiring, state, limits)),
  );
}

/** Computes the rare question late. A getter in an object literal would do, but there the engine keeps what it encloses for long. */
class Look implements Seen {
  readonly level: Seen['level'];
  readonly reported: Reported;
  readonly neighbour: Seen['neighbour'];
  private readonly bounces: () => boolean;

  constructor(
    level: Seen['level'],
    reported: Reported,
    neighbour: Seen['neighbour'],
    bounces: () => boolean,
  ) {
    this.level = level;
    this.reported = reported;
    this.neighbour = neighbour;
    this.bounces = bounces;
  }

  get chatters(): boolean {
    return this.bounces();
  }
}

interface Levels {
  readonly own: Level;
  readonly neighbour: Level | undefined;
}

function levelsOf(
  rig: Rig,
  state: State,
  wiring: Wiring,
  world: World,
  limits: PinLimits,
  solved: typeof levelsIn,
): Levels {
  const network = standing(rig, state, wiring);
  const beside = network.some(({ name }) => name === neighbourOf('filter'));
  const looked = isSwallowed(rig, network, state, wiring, limits)
    ? standing(rig, { ...state, actuation: 'rest' }, wiring)
    : network;
  const pins = beside ? ['pin', neighbourOf('pin')] : ['pin'];
  const [own = 'floats', neighbour] = solved(looked, limits, world.unit, pins);
  return { own: rig.pin === 'follows' ? own : rig.pin === 'reads open' ? 'open' : 'conducting', neighbour };
}

/** A tap is over before a slow filter lets it through. */
function isSwallowed(rig: Rig, network: Network, state: State, wiring: Wiring, limits: PinLimits): boolean {
  if (state.actuation !== 'tapped' || isWindow(limits)) return false;
  const rest = standing(rig, { ...state, actuation: 'rest' }, wiring);
  const { surelyShows } = responseOf(rest, network, limits);
  // A pin that the tap does not move at all is nothing to be swallowed.
  return rig.setting.filterMs > tapLasts || (Number.isFinite(surelyShows) && surelyShows > tapLasts);
}

const isWindow = ({ kind }: PinLimits): boolean => kind === 'window';

const oneOf = (levels: readonly Level[]): Level | 'flickers' => {
  const [first = 'floats'] = levels;
  return levels.every((each) => each === first) ? first : 'flickers';
};

/** With the setting right, a sound switch that is pressed reads active. */
function reportedAs(level: Level | 'flickers', rig: Rig | undefined, { contact }: Wiring): Reported {
  if (rig?.setting.enabled === false) return 'inactive';
  if (level === 'flickers' || level === 'floats') return 'unsteady';
  if (level === 'uncertain') return 'uncertain';
  // A window input tells a short and a cut apart from both; it reports them as a trip.
  if (level === 'shorted' || level === 'cut') return 'active';
  const active = (level === 'conducting') === (contact === 'normally open');
  return active === !rig?.setting.inverted ? 'active' : 'inactive';
}

function letsBounceThrough(rig: Rig, wiring: Wiring, state: State, limits: PinLimits): boolean {
  if (rig.setting.filterMs >= bounceLasts || isWindow(limits)) return false;
  const at = (actuation: State['actuation']) => standing(rig, { ...state, actuation }, wiring);
  const [rest, pressed] = [at('rest'), at('pressed by hand')];
  return (
    Math.min(responseOf(rest, pressed, limits).mayShow, responseOf(pressed, rest, limits).mayShow) <
    bounceLasts
  );
}

import { type Millis, ms, type Volts, volts } from '../../model/units.ts';
import { levelsIn } from './level.ts';
import type { Network } from './network.ts';
import { resistor } from './network.ts';
import { pressed } from './parts/contacts.ts';
import { responseOf } from './response.ts';
import { soundRig, standing } from './rig.ts';
import { solve } from './solve.ts';
import { looks, type State } from './state.ts';
import { nominalWorld, type Wiring } from './wiring.ts';

/** How far a sound input is from being read wrongly. */
export interface Margins {
  /** How far the terminal's voltage may be pushed towards the other level until it is no longer surely read right. */
  readonly atRest: Volts;
  readonly pressed: Volts;
  /** A through the closed contact, with nothing else done. */
  readonly wettingAmps: number;
  /** Highest resistance of the closed contact that is still surely read as closed, ohm; zero where none is. */
  readonly highestContactOhms: number;
  /** Lowest leak across the open contact that is still surely read as open, ohm; infinite where none is. */
  readonly lowestLeakOhms: number;
  /** Shortest pulse that surely gets through the filter's resistor and capacitor, and the longest that surely does not. */
  readonly shortestPulse: Millis;
  readonly longestIgnored: Millis;
}

export function marginsOf(wiring: Wiring): Margins {
  const world = nominalWorld(wiring);
  const rig = soundRig(wiring, world);
  const limits = wiring.template.limits(world.numbers, wiring.family);
  const at = (state: State) => standing(rig, state, wiring);
  const [rest, held] = [at(looks.rest), at(looks.pressed)];
  const [closed, open] = wiring.contact === 'normally open' ? [held, rest] : [rest, held];
  const read = (network: Network) => levelsIn(network, limits, 'any')[0];
  const responses = [responseOf(rest, held, limits), responseOf(held, rest, limits)];
  return {
    atRest: pushable(rest, read),
    pressed: pushable(held, read),
    wettingAmps: Math.abs(solve(closed).ampsIn(pressed)),
    highestContactOhms: edge((ohms) => read(withContact(closed, ohms)) === 'conducting', 'highest'),
    lowestLeakOhms: edge((ohms) => read([...open, ...leak(open, ohms)]) === 'open', 'lowest'),
    shortestPulse: ms(Math.max(...responses.map(({ surelyShows }) => surelyShows))),
    longestIgnored: ms(Math.min(...responses.map(({ mayShow }) => mayShow))),
  };
}

/** V; no voltage on a machine of this kind is higher. */
const farVolts = 60;
/** Leave less of a volt, or of a resistance, than any figure that is shown. */
const halvings = 28;

/** The terminal is held by a source that is moved until the reading is no longer the one it was. */
function pushable(network: Network, read: (network: Network) => string | undefined): Volts {
  const was = solve(network).voltsAt('terminal');
  const right = read(network);
  if (was === undefined || (right !== 'conducting' && right !== 'open')) return volts(0);
  const held = (by: number): Network => [
    ...network,
    { kind: 'voltage', name: 'pushed', from: 'terminal', to: '0 V', volts: was + by },
  ];
  const reach = [1, -1].map((way) => {
    if (read(held(way * farVolts)) === right) return Number.POSITIVE_INFINITY;
    let [good, bad] = [0, farVolts];
    for (let step = 0; step < halvings; step++) {
      const middle = (good + bad) / 2;
      if (read(held(way * middle)) === right) good = middle;
      else bad = middle;
    }
    return good;
  });
  return volts(Math.min(...reach));
}

const withContact = (network: Network, ohms: number): Network =>
  network.map((each) =>
    each.kind === 'switch' && each.name === pressed ? { ...each, closedOhms: ohms } : each,
  );

function leak(network: Network, ohms: number): Network {
  const contact = network.find(({ name }) => name === pressed);
  return contact === undefined ? [] : [resistor('leak', contact.from, contact.to, ohms)];
}

/** Where a resistance between a milliohm and a gigohm stops being read right, found by halving its logarithm. */
function edge(isRight: (ohms: number) => boolean, which: 'highest' | 'lowest'): number {
  const [best, worst] = which === 'highest' ? [-3, 9] : [9, -3];
  if (!isRight(10 ** best)) return which === 'highest' ? 0 : Number.POSITIVE_INFINITY;
  if (isRight(10 ** worst)) return 10 ** worst;
  let [good, bad] = [best, worst];
  for (let step = 0; step < halvings; step++) {
    const middle = (good + bad) / 2;
    if (isRight(10 ** middle)) good = middle;
    else bad = middle;
  }
  return 10 ** good;
}

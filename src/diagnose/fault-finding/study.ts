import { share, type Volts, volts } from '../../model/units.ts';
import type {
  SpreadStudied,
  StateStudied,
  StudiedState,
  WiringAsStudied,
  WiringStudy,
} from '../../model/wiring-study.ts';
import { levelsIn } from '../circuit/level.ts';
import { marginsOf } from '../circuit/margins.ts';
import { ground, nodesOf } from '../circuit/network.ts';
import { pressed } from '../circuit/parts/contacts.ts';
import type { Random } from '../circuit/random.ts';
import { soundRig, standing } from '../circuit/rig.ts';
import { solve } from '../circuit/solve.ts';
import { looks, type State } from '../circuit/state.ts';
import type { ValueName } from '../circuit/values.ts';
import { nominalWorld, type Wiring } from '../circuit/wiring.ts';
import { coverageOf } from './coverage.ts';
import type { Fault } from './fault.ts';
import { studyFault } from './fault-study.ts';
import { levelsAtCorners, likelyReadings } from './likely-readings.ts';
import { readingOf, rigsWith, type Seen } from './reading-of.ts';
import { faultNamed, faultsOf } from './registry.ts';

/** What the wiring is called and where its contact's kind comes from; the circuit itself knows neither. */
export interface StudyOf {
  readonly wiring: Wiring;
  readonly input?: string;
  readonly contactAssumed?: boolean;
  /** Values that were told, not usual. */
  readonly given?: readonly ValueName[];
}

/** A: currents below are leaks that no one would measure. */
const leastCurrent = 1e-6;

const broken: readonly Fault[] = [faultNamed('signal-core-open')];
const studied: Readonly<Record<StudiedState, readonly [State, readonly Fault[]]>> = {
  rest: [looks.rest, []],
  pressed: [looks.pressed, []],
  broken: [looks.rest, broken],
};

/** Everything that is computed for one wiring. `random` and `boards`: how the tolerances are sampled. */
export function studyWiring(of: StudyOf, random: Random, boards: number): WiringStudy {
  const { wiring } = of;
  const sound = readingOf(wiring, looks.unplugged, []);
  const faults = faultsOf(wiring).map((fault) => studyFault(wiring, fault, sound));
  return {
    wiring: asStudied(of),
    works:
      readingOf(wiring, looks.rest, []).reported === 'inactive' &&
      readingOf(wiring, looks.pressed, []).reported === 'active',
    states: (Object.keys(studied) as StudiedState[]).map((name) => stateOf(wiring, name)),
    margins: marginsOf(wiring),
    spread: (Object.keys(studied) as StudiedState[]).map((name) => spreadOf(wiring, name, random, boards)),
    faults,
    coverage: { fresh: coverageOf(faults, 'fresh'), worked: coverageOf(faults, 'worked') },
  };
}

function asStudied({ wiring, input, contactAssumed = false, given = [] }: StudyOf): WiringAsStudied {
  const { template, values, contact, family, unused, circuit } = wiring;
  const { joins, device, stage, joined } = template;
  return {
    name: circuit.name,
    input,
    contact,
    contactAssumed,
    joins,
    device,
    stage,
    joined,
    family,
    values: Object.entries(values).map(([name, value]) => ({
      name,
      ...value,
      given: given.some((each) => each === name),
    })),
    unused,
  };
}

function stateOf(wiring: Wiring, name: StudiedState): StateStudied {
  const [state, faults] = studied[name];
  const world = nominalWorld(wiring);
  const [rig = soundRig(wiring, world)] = rigsWith(wiring, state, faults, world);
  const network = standing(rig, state, wiring);
  const solution = solve(network);
  const [level = 'floats'] = levelsIn(network, wiring.template.limits(world.numbers, wiring.family), 'any');
  const known = (node: string): Volts | undefined => {
    const found = solution.voltsAt(node);
    return found === undefined ? undefined : volts(found);
  };
  return {
    state: name,
    level,
    reported: readingOf(wiring, state, faults).reported,
    volts: nodesOf(network)
      .filter((node) => node !== ground)
      .map((node) => ({ node, volts: known(node) })),
    currents: network
      .map((each) => ({
        part: each.name,
        amps: solution.ampsIn(each.name),
        watts: solution.wattsIn(each.name),
      }))
      .filter(({ amps }) => Math.abs(amps) >= leastCurrent),
    closed: network.some((each) => each.kind === 'switch' && each.name === pressed && each.closed),
  };
}

/** Levels that no unit's own thresholds change. */
const clear: readonly Seen['level'][] = ['conducting', 'open', 'shorted', 'cut'];

/** Where every corner reads alike and clearly, so does every board between them, and none need be drawn. */
function spreadOf(wiring: Wiring, name: StudiedState, random: Random, boards: number): SpreadStudied {
  const [state, faults] = studied[name];
  const [level, ...others] = levelsAtCorners(wiring, state, faults);
  const sureAtCorners = others.length === 0;
  if (sureAtCorners && level !== undefined && clear.includes(level)) {
    const { reported } = readingOf(wiring, state, faults);
    return { state: name, boards: 0, readings: [{ reported, share: share(1) }], sureAtCorners };
  }
  const readings = likelyReadings(wiring, state, faults, random, boards);
  return {
    state: name,
    boards,
    readings: [...readings].map(([reported, part]) => ({ reported, share: part })),
    sureAtCorners,
  };
}

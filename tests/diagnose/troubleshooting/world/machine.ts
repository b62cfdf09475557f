import { drawn } from '../../../../src/diagnose/circuit/boards.ts';
import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import { circuits } from '../../../../src/diagnose/circuit/registry.ts';
import { type Wiring, type World, wiringOf } from '../../../../src/diagnose/circuit/wiring.ts';
import type { Fault } from '../../../../src/diagnose/fault-finding/fault.ts';
import { faultsOf } from '../../../../src/diagnose/fault-finding/registry.ts';
import type { History } from '../../../../src/diagnose/troubleshooting/hypotheses.ts';
import type { Surroundings } from '../../../../src/diagnose/troubleshooting/imagined.ts';
import type { FaultName } from '../../../../src/model/fault-names.ts';
import { byDecades, byWeight, chanceFor, evenly, happens, oneOf } from './draws.ts';
import { partOf } from './troubles.ts';

/** One broken machine: what is wrong with it, its board as bought, and how its parts and its person happen to be. */
export interface Machine {
  readonly seed: number;
  readonly wiring: Wiring;
  readonly history: History;
  readonly around: Surroundings;
  readonly faults: readonly FaultName[];
  readonly board: World;
  readonly unit: Unit;
}

/** What no data sheet promises and every unit has. */
export interface Unit {
  /** Between the voltages that surely read low and surely read high. */
  readonly threshold: number;
  readonly besideThreshold: number;
  /** Between surely off and surely on, of the coupler and of the sensor's supply. */
  readonly coupler: number;
  readonly sensor: number;
  /** A through whatever holds the pin: what a workshop's mains couples in. */
  readonly humAmps: number;
  /** V at the pin. */
  readonly noiseVolts: number;
  readonly filterMs: number;
  readonly bounceMs: number;
  /** How likely bounce that reaches the controller is to be told by its reports. */
  readonly bounceTold: number;
  /** What the meter makes of a reading of 1. */
  readonly meter: number;
  /** The other input that a fault reaches is the one of the axis' other end. */
  readonly besideIsOtherEnd: boolean;
}

/** Shares of machines with nothing wrong at the input, and with two things wrong at once. */
const sound = 0.03;
const twice = 0.06;

/** The usual wiring of every circuit; one object each, so that what is computed for it is computed once. */
const wirings = circuits.map((circuit) => wiringOf(circuit));

export function machineOf(seed: number): Machine {
  const random = chanceFor(seed, 'machine');
  const wiring = oneOf(random, wirings);
  const history = oneOf(random, ['fresh', 'worked'] as const);
  const otherEnd = happens(random, 0.6);
  const told = happens(random, 0.8) ? 'both' : oneOf(random, ['levels', 'active'] as const);
  const possible = faultsOf(wiring).filter(({ name }) => otherEnd || name !== 'ends-swapped');
  return {
    seed,
    wiring,
    history,
    around: { told, otherEnd },
    faults: faultsAmong(possible, history, random),
    board: drawn(wiring, random),
    unit: unitOf(random, otherEnd),
  };
}

/** The same machine with some of its faults mended. */
export const mended = (machine: Machine, fixed: readonly FaultName[]): Machine => ({
  ...machine,
  faults: machine.faults.filter((name) => !fixed.includes(name)),
});

function faultsAmong(possible: readonly Fault[], history: History, random: Random): readonly FaultName[] {
  const weightOf = ({ likelihood }: Fault) => Math.max(likelihood[history], 0.5);
  const how = random();
  if (how < sound) return [];
  const first = byWeight(random, possible, weightOf);
  if (how > sound + twice) return [first.name];
  // One part cannot go wrong in two ways at once.
  const others = possible.filter(({ name }) => partOf(name) !== partOf(first.name));
  return [first.name, byWeight(random, others, weightOf).name].sort();
}

const unitOf = (random: Random, otherEnd: boolean): Unit => ({
  threshold: random(),
  besideThreshold: random(),
  coupler: random(),
  sensor: random(),
  humAmps: byDecades(random, 1e-7, 1e-6),
  noiseVolts: evenly(random, 0.005, 0.04),
  filterMs: evenly(random, 2, 10),
  bounceMs: byDecades(random, 0.3, 6),
  bounceTold: oneOf(random, [0.35, 0.95]),
  meter: evenly(random, 0.985, 1.015),
  besideIsOtherEnd: otherEnd && happens(random, 0.25),
});

import { homingPlan, type PlanPart, type Setup, simulate } from '../../../scripts/simulated-seek.mjs';
import { type Candidates, candidatesFor } from '../../../src/diagnose/seek/candidates.ts';
import type { Features } from '../../../src/diagnose/seek/features.ts';
import { observe, type SeekAnswers, type SeekEvidence } from '../../../src/diagnose/seek/observe.ts';
import { type SeekRoles, seekRoles } from '../../../src/diagnose/seek/roles.ts';
import { type SeekRun, seekRun } from '../../../src/diagnose/seek/run.ts';
import type { State } from '../../../src/diagnose/signal/track.ts';
import type { Window } from '../../../src/model/procedure.ts';
import type { Reading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';
import { machineFrom } from '../stage.ts';

export const windowOf = (readings: readonly Reading[]): Window => ({
  from: ms(0),
  to: ms(readings.at(-1)?.arrived ?? 0),
  lead: undefined,
  readings,
});

/** A machine of our own: X that homes to the left, Z to its top, Y with two motors and two switches, a turning A, and U with a switch at either end of one input. */
export const machine = machineFrom(`machine: Seek stage
axes:
  X: { travel: 300, homes: negative, positive: right, moves: tool, home value: 0, back-off: 2 mm, approach speed: 900 mm/min, acceleration: 300 mm/s2, reaction: 5 ms, step: 0.0125 mm }
  Y: { travel: 300, homes: negative, positive: back, moves: tool, home value: 0, back-off: 2 mm, approach speed: 900 mm/min, acceleration: 300 mm/s2, reaction: 5 ms, step: 0.0125 mm, motors: 2 }
  Z: { travel: 90, homes: positive, positive: top, moves: tool, home value: 0, back-off: 2 mm, approach speed: 900 mm/min, acceleration: 300 mm/s2, reaction: 5 ms, step: 0.0125 mm }
  A: { kind: rotary, homes: positive, home value: 0, step: 0.0125 deg }
  U: { travel: 100, homes: negative, home value: 0, approach speed: 900 mm/min, acceleration: 300 mm/s2, step: 0.0125 mm }
inputs:
  x-home: { duty: [home, limit], axis: X, end: negative, side: left, place: left, overtravel: 3 mm }
  x-far: { duty: [limit], axis: X, end: positive, side: right, place: right }
  y-left: { duty: [home], axis: Y, end: negative, side: front, place: front left, motor: 1, overtravel: 3 mm }
  y-right: { duty: [home], axis: Y, end: negative, side: front, place: front right, motor: 2, overtravel: 3 mm }
  z-top: { duty: [home], axis: Z, end: positive, side: top, place: top, overtravel: 3 mm }
  a-dog: { duty: [home], axis: A, end: positive, place: under the table }
  u-ends:
    joined: series
    duty: [home, limit]
    switches:
      u-low: { axis: U, end: negative, place: inner end }
      u-high: { axis: U, end: positive, place: outer end }
  probe: { duty: [probe], place: in the drawer }
`);

export const proved = {
  'x-home': 'x-home',
  'x-far': 'x-far',
  'y-left': 'y-left',
  'y-right': 'y-right',
  'z-top': 'z-top',
  'a-dog': 'a-dog',
};

export interface Played {
  readonly axis: string;
  readonly runs: readonly Setup[];
  readonly answers?: SeekAnswers;
  readonly mapProved?: boolean;
  readonly more?: Partial<SeekEvidence>;
  readonly cutOut?: (readings: readonly Reading[]) => readonly Reading[];
}

export function rolesOf(axis: string, mapProved = true): SeekRoles {
  const roles = seekRoles(machine, axis, mapProved ? proved : {});
  if (!roles) throw new Error(`no axis ${axis}`);
  return roles;
}

export function runOf(
  setup: Setup,
  roles: SeekRoles,
  cutOut = (readings: readonly Reading[]) => readings,
  rest: Readonly<Record<string, State>> = {},
): SeekRun {
  const { readings } = simulate({ axis: roles.axis.letter, acceleration: 300, ...setup });
  const { rapid, acceleration } = roles.axis;
  return seekRun({
    window: windowOf(cutOut(readings)),
    roles,
    abilities: { step: mm(setup.step ?? 0.0125), rapid, acceleration },
    rest,
  });
}

export function play({ axis, runs, answers = {}, mapProved = true, more, cutOut }: Played): {
  readonly features: Features;
  readonly candidates: Candidates;
  readonly names: readonly string[];
} {
  const roles = rolesOf(axis, mapProved);
  const seen = runs.map((setup) => runOf(setup, roles, cutOut));
  const features = observe({ roles, runs: seen, answers, mapProved, ...more });
  const candidates = candidatesFor(features, roles);
  return { features, candidates, names: candidates.left.map(({ name }) => name) };
}

/** Switches of X as they stand: home trips at −2, far end at 302, of true position. */
export const xSwitches = {
  'x-home': { actuates: -2, frees: -1.6, outwards: -1 },
  'x-far': { actuates: 302, frees: 301.6, outwards: 1 },
} as const;

export const home = (
  way: 1 | -1,
  input: string,
  more: Partial<Parameters<typeof homingPlan>[0]> = {},
): readonly PlanPart[] => homingPlan({ way, input, ...more });

/** An X seek with its switches, standing 20 mm from its home end. */
export const onX = (setup: Partial<Setup> = {}): Setup => ({
  plan: home(-1, 'x-home'),
  stands: 20,
  switches: xSwitches,
  ...setup,
});

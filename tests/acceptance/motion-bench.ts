import { machineFor } from '../../src/bench/machines.ts';
import { portal, portalFile } from '../../src/bench/portal.ts';
import { scenario, scenarioFile } from '../../src/bench/scenario.ts';
import type { HandsOptions } from '../../src/bench/simulated-hands.ts';
import type { MachineTruth } from '../../src/bench/truth.ts';
import type { Ask } from '../../src/model/ask.ts';
import type { Source } from '../../src/model/source.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import type { FaceEvent } from '../../src/session/operator.ts';
import { remove, temporaryFolder, type VirtualOutcome, workplace } from '../session/virtual-session.ts';

/** Where the axes stand when nothing else is said: the long ones near their switches, where what is watched is the same and takes less time. */
const near: Readonly<Record<string, number>> = { X: 60, Y: 60 };

export interface MotionCase {
  /** What is wrong from the start, as `--fault` spells it; the machine is one on which it can be wrong. */
  readonly fault?: string;
  /** What goes wrong only after the presses have proved every wire. */
  readonly later?: string;
  /** With the first ask of which check; left out: of the seeks. */
  readonly laterAt?: CheckName;
  /** An axis that somebody moves at the control before the first seek, by so many mm or degrees. */
  readonly moved?: readonly [axis: string, by: number];
  readonly on?: 'router' | 'portal';
  /** X and Y, which have one place in the order, home at the same time. */
  readonly atOnce?: boolean;
  /** Subjects asked for. */
  readonly only?: readonly string[];
  readonly hands?: HandsOptions;
  /** Where axes really stand as it begins, mm. */
  readonly stands?: Readonly<Record<string, number>>;
  readonly checks?: readonly CheckName[];
  readonly cycles?: number;
  readonly seed?: number;
  /** Reports a second; left out: a hundred. */
  readonly rate?: number;
  /** Stands between the bench’s port and the session. */
  readonly through?: (port: Source) => Source;
}

export const motionChecks: readonly CheckName[] = ['press', 'stop', 'seek', 'homing'];

/** A commissioning of the motion of one axis, or of those whose switches are named. */
export async function motionSession(given: MotionCase): Promise<VirtualOutcome> {
  const {
    fault,
    later,
    moved,
    hands = {},
    stands = near,
    checks = motionChecks,
    cycles,
    seed,
    through,
  } = given;
  const isPortal = (given.on ?? (machineFor([fault ?? '']).truth === portal && 'portal')) === 'portal';
  const { only = isPortal ? ['y-left', 'y-right', 'stop'] : ['x-home', 'stop'] } = given;
  const folder = temporaryFolder();
  const truth = { ...standing(isPortal ? portal : scenario, stands), homesAtOnce: given.atOnce ?? false };
  const place = workplace({
    truth,
    faults: fault === undefined ? [] : [fault],
    ...(seed !== undefined && { seed }),
    ...(given.rate !== undefined && { telling: { rate: given.rate } }),
  });
  try {
    return await place.session({
      folder,
      hands,
      ...(through && { through }),
      session: {
        machineText: isPortal ? portalFile : scenarioFile,
        checks,
        presses: 1,
        restSeconds: 1,
        only,
        cycles,
      },
      stopAt: meanwhile([
        // The drives are still off: nothing moves yet.
        [
          ({ check }) => check === (given.laterAt ?? 'seek'),
          () => later !== undefined && place.bench.plant(later),
        ],
        [
          ({ check, action }) => check === 'seek' && action === 'confirm',
          () => moved && place.bench.move(...moved),
        ],
      ]),
    });
  } finally {
    place.leave();
    remove(folder);
  }
}

/** Does each thing once, at the first ask that it waits for. */
function meanwhile(
  things: readonly (readonly [when: (ask: Ask) => boolean, act: () => unknown])[],
): (event: FaceEvent) => false {
  const left = new Set(things);
  return (event) => {
    if (event.kind !== 'ask') return false;
    for (const thing of left)
      if (thing[0](event.ask)) {
        left.delete(thing);
        thing[1]();
      }
    return false;
  };
}

const standing = (truth: MachineTruth, stands: Readonly<Record<string, number>>): MachineTruth => ({
  ...truth,
  axes: truth.axes.map((axis) => ({ ...axis, stands: stands[axis.letter] ?? axis.stands })),
});

/** `seek X: failed heads-away(direction-inverted, motor-coil-reversed)`: each kind with what it can have been, then what is missing. */
export const motionFound = (
  { facts }: VirtualOutcome,
  of: readonly CheckName[] = ['seek', 'homing'],
): readonly string[] =>
  facts.verdicts
    .filter(({ check }) => of.includes(check))
    .map(({ check, subject, status, findings, missing }) => {
      const told = findings.map((each) =>
        'candidates' in each && each.candidates.length > 0
          ? `${each.kind}(${each.candidates.join(', ')})`
          : each.kind,
      );
      return [`${check} ${subject}: ${status}`, ...told, ...missing].join(' ');
    });

export const dangersIn = ({ events }: VirtualOutcome): readonly string[] =>
  events.flatMap((event) => (event.kind === 'danger' ? [`${event.axis} ${event.finding}`] : []));

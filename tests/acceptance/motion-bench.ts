import { machineFor } from '../../src/bench/machines.ts';
import { portal, portalFile } from '../../src/bench/portal.ts';
import { scenario, scenarioFile } from '../../src/bench/scenario.ts';
import type { HandsOptions } from '../../src/bench/simulated-hands.ts';
import type { MachineTruth } from '../../src/bench/truth.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import { remove, temporaryFolder, type VirtualOutcome, workplace } from '../session/virtual-session.ts';

/** Where the axes stand when nothing else is said: the long ones near their switches, where what is watched is the same and takes less time. */
const near: Readonly<Record<string, number>> = { X: 60, Y: 60 };

export interface MotionCase {
  /** What is wrong from the start, as `--fault` spells it; the machine is one on which it can be wrong. */
  readonly fault?: string;
  /** What goes wrong only after the presses have proved every wire. */
  readonly later?: string;
  readonly on?: 'router' | 'portal';
  /** Subjects asked for. */
  readonly only?: readonly string[];
  readonly hands?: HandsOptions;
  /** Where axes really stand as it begins, mm. */
  readonly stands?: Readonly<Record<string, number>>;
  readonly checks?: readonly CheckName[];
  readonly cycles?: number;
}

export const motionChecks: readonly CheckName[] = ['press', 'stop', 'seek', 'homing'];

/** A commissioning of the motion of one axis, or of those whose switches are named. */
export async function motionSession(given: MotionCase): Promise<VirtualOutcome> {
  const { fault, later, hands = {}, stands = near, checks = motionChecks, cycles } = given;
  const isPortal = (given.on ?? (machineFor([fault ?? '']).truth === portal && 'portal')) === 'portal';
  const { only = isPortal ? ['y-left', 'y-right', 'stop'] : ['x-home', 'stop'] } = given;
  const folder = temporaryFolder();
  const truth = standing(isPortal ? portal : scenario, stands);
  const place = workplace({ truth, faults: fault === undefined ? [] : [fault] });
  let planted = later === undefined;
  try {
    return await place.session({
      folder,
      hands,
      session: {
        machineText: isPortal ? portalFile : scenarioFile,
        checks,
        presses: 1,
        restSeconds: 1,
        only,
        cycles,
      },
      stopAt: (event) => {
        if (later !== undefined && !planted && event.kind === 'ask' && event.ask.check === 'seek') {
          planted = true;
          place.bench.plant(later);
        }
        return false;
      },
    });
  } finally {
    place.leave();
    remove(folder);
  }
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

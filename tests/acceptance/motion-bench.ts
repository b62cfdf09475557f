import { scenario } from '../../src/bench/scenario.ts';
import type { HandsOptions } from '../../src/bench/simulated-hands.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import { remove, temporaryFolder, type VirtualOutcome, virtualSession } from '../session/virtual-session.ts';

/** The bench with its long axes near their switches: what is watched is the same, and takes less time. */
const near = {
  ...scenario,
  axes: scenario.axes.map((axis) => (axis.letter === 'Z' ? axis : { ...axis, stands: 60 })),
};

export interface MotionCase {
  readonly fault?: string;
  readonly only?: readonly string[];
  readonly hands?: HandsOptions;
  readonly far?: boolean;
  readonly checks?: readonly CheckName[];
}

const motionChecks: readonly CheckName[] = ['press', 'stop', 'seek', 'homing'];

/** A commissioning of the motion of one axis, or of those whose switches are named. */
export async function motionSession({
  fault,
  only = ['x-home', 'stop'],
  hands = {},
  far = false,
  checks = motionChecks,
}: MotionCase): Promise<VirtualOutcome> {
  const folder = temporaryFolder();
  try {
    return await virtualSession({
      folder,
      hands,
      bench: { truth: far ? scenario : near, faults: fault === undefined ? [] : [fault] },
      session: { checks, presses: 1, restSeconds: 1, only },
    });
  } finally {
    remove(folder);
  }
}

/** `seek X: failed heads-away(direction-inverted, motor-coil-reversed)`: each kind with what it can have been. */
export const motionFound = ({ facts }: VirtualOutcome): readonly string[] =>
  facts.verdicts
    .filter(({ check }) => check === 'seek' || check === 'homing')
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

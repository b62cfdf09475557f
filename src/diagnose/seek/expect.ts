import type { InputName } from '../../model/machine.ts';
import type { Mm } from '../../model/units.ts';
import type { State } from '../signal/track.ts';
import type { SeekExpectation } from './expectation.ts';
import type { SeekRoles } from './roles.ts';

export interface StreamGrid {
  /** Inputs' states when free, where the stream carries levels alone. */
  readonly rest: Readonly<Record<InputName, State>>;
  readonly step: Mm;
  /** Whether `step` is known to be the grid of the reported positions: told by the file and not contradicted, or seen in earlier motion. */
  readonly gridKnown: boolean;
}

/**
 * What a seek is watched against. A Z that homes to its top and is commanded down heads away; one whose file has it home downwards heads for the work all the same, unless it
 * has a probe to touch with.
 */
export function expectationOf(roles: SeekRoles, { rest, step, gridKnown }: StreamGrid): SeekExpectation {
  const { axis, toward, home, farEnd, otherAxes, probes } = roles;
  return {
    axis: axis.letter,
    toward,
    towardWork: axis.letter === 'Z' && probes.length === 0 ? -1 : undefined,
    inputs: home,
    others: [
      ...farEnd.map((input) => ({ input })),
      ...otherAxes.map((input) => ({ input, axis: roles.worksOther[input] })),
    ],
    step,
    gridKnown,
    rapid: axis.rapid,
    acceleration: axis.acceleration,
    reaction: axis.reaction,
    backOff: axis.backOff,
    homeValue: axis.homeValue,
    rest,
  };
}

import type { AxisTruth } from './truth.ts';

/** An axis of the scenarios: one motor, homing to its negative end at 15 mm/s. What differs is said beside it. */
export function plainAxis(
  own: Pick<AxisTruth, 'letter' | 'stops' | 'stands' | 'homeInputs' | 'soft'>,
): AxisTruth {
  return {
    ...own,
    turns: false,
    motors: 1,
    homes: 'negative',
    homeValue: 0,
    homeOrder: 2,
    backOff: 3,
    approach: 15,
    slow: 2,
    rapid: 60,
    acceleration: 300,
    reaction: 10,
    step: 0.0125,
  };
}

import { share } from '../../model/units.ts';
import type { Coverage, FaultStudied, FoundWhen } from '../../model/wiring-study.ts';

type Weighed = Pick<FaultStudied, 'found' | 'dangerous' | 'likelihood'>;

/**
 * The definition of diagnostic coverage in ISO 13849-1 (the failure rate of the dangerous failures that are detected, over that of all
 * dangerous failures) with the trade's likelihoods in place of failure rates: a way to compare wirings, no rating of a safety function.
 */
export function coverageOf(faults: readonly Weighed[], age: 'fresh' | 'worked'): Coverage {
  const dangerous = faults.filter((each) => each.dangerous);
  const weight = (some: readonly Weighed[]) => some.reduce((sum, { likelihood }) => sum + likelihood[age], 0);
  const whole = weight(dangerous);
  const found = (...when: readonly FoundWhen[]) =>
    share(whole === 0 ? 1 : weight(dangerous.filter((each) => when.includes(each.found))) / whole);
  return {
    dangerous: whole,
    atOnce: found('at once'),
    byPress: found('at once', 'next press'),
    byUnplugging: found('at once', 'next press', 'unplugging'),
  };
}

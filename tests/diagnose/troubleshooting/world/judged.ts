import type { FaultName } from '../../../../src/model/fault-names.ts';
import type { Searched } from './search.ts';

/** `named`: the truth is the cause named or one of the inseparable ones; `in part`: of two faults one is named, and nothing that is not there alone. */
export type Verdict = 'named' | 'in part' | 'wrong';

const key = (names: readonly FaultName[]): string => [...names].sort().join('+');

export function judged({ machine: { faults }, conclusion: { causes } }: Searched): Verdict {
  if (causes.some((each) => key(each) === key(faults))) return 'named';
  const part = causes.some((each) => each.length > 0 && each.every((name) => faults.includes(name)));
  return faults.length > 1 && part ? 'in part' : 'wrong';
}

import type { Facts } from '../../model/verdict.ts';
import type { VerdictRecord } from '../schema/verdict.ts';

/** One sort of facts from every verdict that has it, in the order of the verdicts. */
export function factsIn<Key extends keyof Facts>(
  verdicts: readonly VerdictRecord[],
  key: Key,
): readonly NonNullable<Facts[Key]>[] {
  const found: NonNullable<Facts[Key]>[] = [];
  for (const { facts } of verdicts) {
    const own = facts[key];
    if (own !== undefined) found.push(own as NonNullable<Facts[Key]>);
  }
  return found;
}

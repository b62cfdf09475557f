import { type Status, statuses } from '../model/verdict.ts';

/** The worst of some statuses; of none: not tested. */
export function worstOf(some: readonly Status[]): Status {
  const found = statuses.findLast((status) => some.includes(status));
  return found ?? 'not-tested';
}

import type { SearchOrder } from '../../model/cause-facts.ts';
import { type AnyCheck, anyCheck } from '../checks/any-check.ts';
import { mended } from './mended.ts';
import { troubleshoot } from './troubleshoot.ts';

/** What stands before the re-test: the search itself, then whether its cause is mended. */
export const searchChecks = (order: SearchOrder): readonly AnyCheck[] => [
  anyCheck(troubleshoot(order)),
  anyCheck(mended(order)),
];

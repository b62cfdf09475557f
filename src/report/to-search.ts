import type { Subject } from '../model/machine.ts';
import type { Verdict } from '../model/verdict.ts';
import type { ChangeRecord } from './record.ts';

/** Switches that failed their press or their open wire: what a search for the cause can begin from. */
export const failedSwitches = (
  verdicts: readonly Pick<Verdict, 'check' | 'subject' | 'status'>[],
): readonly Subject[] => {
  const failed = verdicts.filter(
    ({ check, status }) => status === 'failed' && (check === 'press' || check === 'open-wire'),
  );
  return [...new Set(failed.map(({ subject }) => subject))];
};

/** Those of them of which not all that has to be changed is known already. */
export const toSearch = (
  failed: readonly Subject[],
  changes: readonly Pick<ChangeRecord, 'subject' | 'what'>[],
): readonly Subject[] =>
  failed.filter((subject) => {
    const own = changes.filter((change) => change.subject === subject);
    return own.length === 0 || own.some(({ what }) => what === 'cause');
  });

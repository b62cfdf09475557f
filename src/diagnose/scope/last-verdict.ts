import type { Subject } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { CheckName, Verdict } from '../../model/verdict.ts';

/** What a check came to about a subject earlier in this session. */
export const lastOf = (check: CheckName, subject: Subject, { known }: Scene): Verdict | undefined =>
  known.verdicts.findLast((each) => each.check === check && each.subject === subject);

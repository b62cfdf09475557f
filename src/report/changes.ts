import type { CheckName } from '../model/check-name.ts';
import { type Finding, weightOf } from '../model/finding.ts';
import { allSwitches } from '../model/machine.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { changesOf } from '../words/findings/catalogue.ts';
import { asNamed, toFind } from '../words/findings/to-find.ts';
import type { ChangeRecord } from './record.ts';

type Judged = Pick<SessionFacts, 'verdicts' | 'machine'>;
interface Found {
  readonly finding: Finding;
  readonly subject: string;
  readonly check: CheckName;
  readonly changes: ReturnType<typeof changesOf>;
}

const order = { fault: 0, limitation: 1, note: 2 } as const;

/** The changes that the findings ask for, faults first, each once, then what has to be found first. The tool makes none of them. */
export function changesFor(facts: Judged): readonly ChangeRecord[] {
  const found = withChanges(facts);
  const known = found
    .map((each, at) => ({ ...each, at }))
    .sort((a, b) => order[weightOf[a.finding.kind]] - order[weightOf[b.finding.kind]] || a.at - b.at)
    .flatMap(({ changes, subject }) => changes.map((change) => ({ subject, ...change })));
  const once = new Map(
    known.map((each) => [JSON.stringify([each.what, each.from, each.to, each.retest]), each]),
  );
  return [...once.values(), ...searched(facts), ...unknown(facts, found)];
}

function withChanges({ verdicts, machine }: Judged): readonly Found[] {
  const found = verdicts.flatMap(({ findings, subject, check }) =>
    findings.map((finding) => ({ finding, subject, check })),
  );
  return found.map((each) => {
    const together = found
      .filter(({ subject }) => subject === each.subject)
      .map(({ finding }) => finding.kind);
    return { ...each, changes: changesOf(each.finding, { machine, subject: each.subject, together }) };
  });
}

/** What a search has shown to be wrong. */
const causesIn = ({ verdicts }: Judged) =>
  verdicts.flatMap(({ check, subject, status, facts: { cause } }) =>
    check === 'troubleshoot' && status === 'failed' && cause ? [{ subject, cause }] : [],
  );

const searched = (facts: Judged): readonly ChangeRecord[] =>
  causesIn(facts).map(({ subject, cause }) => ({ subject, ...asNamed(cause, subject) }));

/** A row for everything with a fault whose mending nobody knows yet: none is left without one. */
function unknown(facts: Judged, found: readonly Found[]): readonly ChangeRecord[] {
  const named = causesIn(facts).map(({ subject }) => subject);
  const open = found.filter(
    ({ finding, changes, subject }) =>
      weightOf[finding.kind] === 'fault' && changes.length === 0 && !named.includes(subject),
  );
  const switches = allSwitches(facts.machine).flatMap(({ subject, input }) => [subject, input]);
  return [...new Set(open.map(({ subject }) => subject))].flatMap((subject) => {
    const own = open.filter((each) => each.subject === subject);
    const [first, ...more] = own.map(({ finding }) => finding);
    if (!first) return [];
    const always: readonly CheckName[] = switches.includes(subject) ? ['rest', 'press', 'open-wire'] : [];
    const checks = [...new Set([...always, ...own.map(({ check }) => check)])];
    return [{ subject, ...toFind([first, ...more], subject, checks) }];
  });
}

import { weightOf } from '../model/finding.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { changesOf } from '../words/findings/catalogue.ts';
import type { ChangeRecord } from './record.ts';

const order = { fault: 0, limitation: 1, note: 2 } as const;

/** The changes that the findings ask for, faults first, each once. The tool makes none of them. */
export function changesFor({ verdicts, machine }: SessionFacts): readonly ChangeRecord[] {
  const found = verdicts.flatMap((verdict) =>
    verdict.findings.map((finding) => ({ finding, subject: verdict.subject })),
  );
  const changes = found
    .map((each, at) => ({ ...each, at }))
    .sort((a, b) => order[weightOf[a.finding.kind]] - order[weightOf[b.finding.kind]] || a.at - b.at)
    .flatMap(({ finding, subject }) => {
      const together = found.filter((each) => each.subject === subject).map((each) => each.finding.kind);
      return changesOf(finding, { machine, subject, together }).map((change) => ({ subject, ...change }));
    });
  const once = new Map(
    changes.map((each) => [JSON.stringify([each.what, each.from, each.to, each.retest]), each]),
  );
  return [...once.values()];
}

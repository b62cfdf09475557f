import type { Finding } from '../../model/finding.ts';
import type { InputName } from '../../model/machine.ts';
import type { Verdict } from '../../model/verdict.ts';
import { answersOf, isElsewhere, type PressEvidence } from './press-evidence.ts';
import { statusOf, withoutEvidence } from './status.ts';

/**
 * Presses in which another input changed and the switch's own kept still, while most others went to its own: another switch touched by mistake, or a joint that joins
 * two wires. Nobody can tell which, so they speak neither for the switch nor against it. Undefined where there are none, or where they
 * are as many as the own ones: then nothing says whose presses they were.
 */
export function setAside(
  item: PressEvidence,
  input: InputName,
): { readonly own: PressEvidence; readonly finding: OfPresses } | undefined {
  const others = item.presses.filter((each) => isElsewhere(each, input));
  const answered = answersOf(item, input);
  if (others.length === 0 || answered <= others.length) return undefined;
  const answeredBy = [...new Set(others.flatMap(({ moved }) => moved.map((each) => each.input)))];
  return {
    own: { ...item, presses: item.presses.filter((each) => !isElsewhere(each, input)) },
    finding: {
      kind: 'another-answered',
      input,
      answeredBy,
      elsewhere: others.length,
      answered,
      asked: item.presses.length,
    },
  };
}

type OfPresses = Extract<Finding, { readonly kind: 'another-answered' }>;

/**
 * What the other presses show to be wrong stays wrong. What they show to be right holds, within this limitation, where `wanted` of them came; fewer are less than was
 * asked for.
 */
export function withAnother(own: Verdict, finding: OfPresses, item: PressEvidence, wanted: number): Verdict {
  const { check, subject, evidence, status, missing } = own;
  const findings = [...own.findings, finding];
  const { elsewhere, answered } = finding;
  const facts = { ...own.facts, presses: { asked: item.asked, answered, elsewhere } };
  const traces = item.presses.map(({ trace }) => trace);
  if (status === 'failed' || missing.length > 0) return { ...own, findings, facts, traces };
  if (answered >= wanted) return { ...own, status: statusOf(findings), findings, facts, traces };
  return withoutEvidence({ check, subject }, 'press-again', { evidence, findings, facts, traces });
}

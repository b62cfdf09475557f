import type { Finding, FindingKind } from '../../model/finding.ts';
import { knownOnly } from '../../model/known-only.ts';
import type { InputName, Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { missShareAtMost95 } from '../../model/statistics.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { setAside, withAnother } from './answered-elsewhere.ts';
import type { Pressed } from './press-evidence.ts';
import { answeringInput, type PressEvidence } from './press-evidence.ts';
import { findingsOf, restActive } from './press-findings.ts';
import { evidenceOfPresses, statusOf, withoutEvidence } from './status.ts';

/** The judge of presses, one switch at a time; `shifted` comes from looking at all of a plug at once. */
export function judgePresses(
  item: PressEvidence,
  pressed: Switch,
  scene: Scene,
  shifted: Finding | undefined,
): Verdict {
  const { input } = pressed;
  const of = { check: 'press', subject: item.subject } as const;
  if (item.flickers || item.briefly === 'not-pressed') return failedFlickering(of, input, item);
  const aside = setAside(item, input);
  if (aside) {
    const own = judgePresses(aside.own, pressed, scene, shifted);
    return withAnother(own, aside.finding, item, scene.presses);
  }
  const traces = item.presses.map((each) => each.trace);
  const answering = answeringInput(item, pressed);
  const answered = item.presses.filter((each) =>
    each.moved.some((moved) => moved.input === (answering ?? input)),
  );
  const facts = factsOf(item, answered, answering, input);
  const confirmed = item.presses.some((each) => each.confirmed);
  const evidence = evidenceOfPresses(answered.length, confirmed);
  if (item.missing) return withoutEvidence(of, item.missing, { evidence, facts, traces });
  const without = (missing: Missing, findings: readonly Finding[] = []) =>
    withoutEvidence(of, missing, { evidence, facts, traces, findings });

  const reported = scene.streamInputs.includes(input);
  const movers = new Set(item.presses.flatMap((each) => each.moved.map((moved) => moved.input)));
  if (movers.size > 0 && !answering)
    return without('never-answered', [{ kind: 'conflicting-answers', inputs: [...movers] }]);
  if (movers.size === 0) {
    if (!reported) return without('input-not-reported', [{ kind: 'input-not-in-stream', input }]);
    if (!confirmed) return without('no-answer-given');
  }
  if (item.briefly === 'unsure') return without('no-answer-given');
  const doubtful = item.rest === 'in-doubt' && restActive(item, input, scene) === '1';
  const findings = [...findingsOf(item, pressed, scene, answering), ...(shifted ? [shifted] : [])];
  if (doubtful)
    return without(
      'rest-in-doubt',
      findings.filter(({ kind }) => !rowKinds.has(kind)),
    );
  return { ...of, status: statusOf(findings), evidence, findings, missing: [], facts, traces };
}

/** What the row would say if the rest level were known to be rest. */
const rowKinds: ReadonlySet<FindingKind> = new Set(['polarity-reversed', 'stuck-active', 'chain-blocked']);

const failedFlickering = (
  of: Pick<Verdict, 'check' | 'subject'>,
  input: InputName,
  item: PressEvidence,
): Verdict => {
  const edges = item.presses.reduce(
    (sum, each) => sum + (each.moved.find((moved) => moved.input === input)?.edges ?? 0),
    0,
  );
  return {
    ...of,
    status: 'failed',
    evidence: 'edge',
    findings: [{ kind: 'flickers', input, ...knownOnly({ edges: edges === 0 ? undefined : edges }) }],
    missing: [],
    facts: {},
    traces: item.presses.map((each) => each.trace),
  };
};

function factsOf(
  item: PressEvidence,
  answered: readonly Pressed[],
  by: InputName | undefined,
  own: InputName,
): Verdict['facts'] {
  const resolution = item.presses.find((each) => each.resolution)?.resolution;
  const all = answered.length > 0 && answered.length === item.presses.length;
  return {
    ...(resolution && { resolution }),
    presses: {
      asked: item.asked,
      answered: answered.length,
      ...(all && { missShareAtMost95: missShareAtMost95(answered.length) }),
    },
    ...(by && by !== own && { answeredBy: by }),
    ...(item.presses.some((each) => each.halted) && { controllerActed: true }),
  };
}

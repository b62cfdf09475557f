import type { Finding } from '../../model/finding.ts';
import type { InputName } from '../../model/machine.ts';
import type { Check, Ended, Procedure, Scene } from '../../model/procedure.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Missing, Resolution, Trace, Verdict } from '../../model/verdict.ts';
import { statusOf, withoutEvidence } from '../judging/status.ts';
import { flickerAtRest, rowAttempts } from '../limits.ts';
import { type Latest, put, refusal } from '../procedures/asking.ts';
import { switchesAsked } from '../scope/switches-asked.ts';
import { changes } from '../signal/excursion.ts';
import { movers } from '../signal/movers.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { traceOf } from '../signal/trace.ts';
import { inputsOf, type State, track } from '../signal/track.ts';

/** One input with hands off. */
interface RestItem {
  readonly input: InputName;
  readonly asked: boolean;
  readonly missing?: Missing;
  readonly state?: State;
  readonly edges: number;
  readonly quietFor: Millis;
  readonly resolution?: Resolution;
  readonly trace?: Trace;
}

/**
 * What does each input say while nobody touches anything? A healthy one says one thing, for as long as anyone listens. A loose
 * screw, a missing pull-up or a film of coolant shows as flicker. An input that keeps still has proved nothing yet: a cut wire does so too.
 */
export const rest: Check<RestItem> = { name: 'rest', gather, judge, teaches };

function* gather(scene: Scene): Procedure<RestItem> {
  const latest: Latest = { status: scene.now };
  const ask = { check: 'rest', action: 'hands-off', seconds: scene.rest } as const;
  let ended: Ended | undefined;
  for (let attempt = 0; attempt < rowAttempts; attempt++) {
    ended = yield* put(ask, latest);
    if (refusal(ended) || (ended.by !== 'gap' && !isOneLateHand(ended))) break;
  }
  if (ended) for (const item of items(scene, ended)) yield { keep: item };
}

/** A single change of a single input: a hand that was not yet off. Looked at once more before it is called flicker. */
function isOneLateHand({ window }: Ended): boolean {
  const edges = [...movers(window)].map((input) => changes(track(window, input)).length);
  return (
    edges.some((count) => count > 0 && count < flickerAtRest) && edges.every((count) => count < flickerAtRest)
  );
}

function items(scene: Scene, ended: Ended): readonly RestItem[] {
  const { window } = ended;
  const declared = new Set(switchesAsked(scene).map((each) => each.input));
  const others = scene.only ? [] : inputsOf(window).filter((input) => !declared.has(input));
  const missing = ended.by === 'gap' ? 'stream-broke-off' : refusal(ended);
  const resolution = resolutionOf(window);
  return [...declared, ...others].map((input) => {
    const samples = track(window, input);
    const last = samples.at(-1);
    return {
      input,
      asked: declared.has(input),
      ...(missing && { missing }),
      ...(last && { state: { level: last.level, active: last.active } }),
      edges: changes(samples).length,
      quietFor: ms(window.to - window.from),
      ...(resolution && { resolution }),
      trace: traceOf(window, 'rest', [input]),
    };
  });
}

function judge(kept: readonly RestItem[], scene: Scene): readonly Verdict[] {
  const asked = new Set(switchesAsked(scene).map((each) => each.input));
  return [...asked].map((input) => {
    const item = kept.find((each) => each.input === input);
    return item ? judgeInput(item) : withoutEvidence({ check: 'rest', subject: input }, 'stopped');
  });
}

function judgeInput({ input, missing, state, edges, quietFor, resolution, trace }: RestItem): Verdict {
  const of = { check: 'rest', subject: input } as const;
  if (missing) return withoutEvidence(of, missing);
  if (!resolution) return withoutEvidence(of, 'stream-broke-off');
  if (!state)
    return withoutEvidence(of, 'input-not-reported', { findings: [{ kind: 'input-not-in-stream', input }] });
  const findings: Finding[] = edges > 0 ? [{ kind: 'flickers', input, edges }] : [];
  return {
    ...of,
    status: statusOf(findings),
    evidence: edges > 0 ? 'edge' : 'commanded',
    findings,
    missing: [],
    facts: { resolution, rest: { ...state, quietFor, edges } },
    traces: trace ? [trace] : [],
  };
}

function teaches(kept: readonly RestItem[]): ReturnType<Check<RestItem>['teaches']> {
  return {
    restHeard: kept.some((each) => !each.missing),
    flickering: kept.filter((each) => each.edges > 0).map((each) => each.input),
  };
}

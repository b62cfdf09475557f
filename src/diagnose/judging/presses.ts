import type { Finding } from '../../model/finding.ts';
import { type InputName, inputOf, type Subject, type Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { missShareAtMost95 } from '../../model/statistics.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { cleanEdges, slowestForBounce } from '../limits.ts';
import type { Pressed } from '../procedures/press-once.ts';
import type { RestCheck } from '../procedures/rest-must-be-rest.ts';
import type { Excursion } from '../signal/excursion.ts';
import { evidenceOfPresses, statusOf, withoutEvidence } from './status.ts';

/** All presses of one switch. */
export interface PressEvidence {
  readonly subject: Subject;
  readonly flickers?: true;
  readonly missing?: Missing;
  readonly rest: RestCheck;
  readonly presses: readonly Pressed[];
  readonly asked: number;
  /** What the person said of answers too brief for a held press. */
  readonly briefly?: 'pressed' | 'not-pressed' | 'unsure';
}

/** The one input that answered the presses of a switch: its own where it did, else the one that answered every time. */
export function answeringInput({ presses }: PressEvidence, { input }: Switch): InputName | undefined {
  const answered = presses.filter((each) => each.moved.length > 0);
  if (answered.length === 0) return undefined;
  const always = (candidate: InputName) =>
    answered.every((each) => each.moved.some((moved) => moved.input === candidate));
  if (always(input)) return input;
  if (answered.some((each) => each.moved.some((moved) => moved.input === input))) return undefined;
  const first = answered[0]?.moved.map((each) => each.input) ?? [];
  return first.find(always);
}

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
  const traces = item.presses.map((each) => each.trace);
  const answering = answeringInput(item, pressed);
  const answered = item.presses.filter((each) => each.moved.some((moved) => moved.input === answering));
  const facts = factsOf(item, answered, answering, input);
  const confirmed = item.presses.some((each) => each.confirmed);
  const evidence = evidenceOfPresses(answered.length, confirmed);
  if (item.missing) return withoutEvidence(of, item.missing, { evidence, facts, traces });
  const without = (missing: Missing, findings: readonly Finding[] = []) =>
    withoutEvidence(of, missing, { evidence, facts, traces, findings });

  const reported = scene.streamInputs.includes(input);
  const movers = new Set(item.presses.flatMap((each) => each.moved.map((moved) => moved.input)));
  if (movers.size > 0 && !answering) {
    const missed = movers.has(input) && answersOf(item, input) < item.presses.length;
    if (!missed) return without('never-answered', [{ kind: 'conflicting-answers', inputs: [...movers] }]);
  }
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
const rowKinds: ReadonlySet<string> = new Set(['polarity-reversed', 'stuck-active', 'chain-blocked']);

const answersOf = (item: PressEvidence, input: InputName): number =>
  item.presses.filter((each) => each.moved.some((moved) => moved.input === input)).length;

const failedFlickering = (
  of: Pick<Verdict, 'check' | 'subject'>,
  input: InputName,
  item: PressEvidence,
): Verdict => ({
  ...of,
  status: 'failed',
  evidence: 'edge',
  findings: [
    {
      kind: 'flickers',
      input,
      edges: item.presses.reduce(
        (sum, each) => sum + (each.moved.find((moved) => moved.input === input)?.edges ?? 0),
        0,
      ),
    },
  ],
  missing: [],
  facts: {},
  traces: item.presses.map((each) => each.trace),
});

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

function restActive(item: PressEvidence, input: InputName, scene: Scene): string | undefined {
  const moved = item.presses.flatMap((each) => each.moved).find((each) => each.input === input);
  if (moved) return moved.rest.active;
  const point = item.presses[0]?.trace.signals.find((each) => each.input === input)?.points[0];
  const index = scene.now?.inputs.indexOf(input) ?? -1;
  return point?.active ?? scene.now?.active[index];
}

function findingsOf(
  item: PressEvidence,
  pressed: Switch,
  scene: Scene,
  by: InputName | undefined,
): readonly Finding[] {
  const { input } = pressed;
  const moves = item.presses.flatMap((each) => each.moved.filter((moved) => moved.input === by));
  if (!by) return unanswered(item, pressed, scene);
  const findings: Finding[] = [];
  if (by !== input) findings.push({ kind: 'answers-elsewhere', input, answeredBy: by });
  if (moves.length < item.presses.length)
    findings.push({ kind: 'misses-presses', input: by, answered: moves.length, asked: item.presses.length });
  findings.push(...polarityOf(moves, by));
  // Held for a second, told for a moment: whoever waits for this report hears of a press when it is over.
  if (item.briefly === 'pressed') findings.push({ kind: 'slow-answer', input: by });
  const along = movedAlong(item, by);
  if (along.length > 0) findings.push({ kind: 'moves-together', input: by, with: along });
  if (bounces(item, moves) || isRestless(item, moves, scene.presses))
    findings.push({ kind: 'chatters', input: by, edges: Math.max(...moves.map((each) => each.edges)) });
  if (item.presses.some((each) => each.stuck.includes(by)) && !pressed.duty.includes('stop'))
    findings.push({ kind: 'sticks', input: by });
  return findings;
}

function unanswered(item: PressEvidence, { input, subject }: Switch, scene: Scene): readonly Finding[] {
  const own = answersOf(item, input);
  if (own > 0) return [{ kind: 'misses-presses', input, answered: own, asked: item.presses.length }];
  if (restActive(item, input, scene) !== '1') return [{ kind: 'never-changes', input }];
  const others =
    inputOf(scene.machine, input)
      ?.switches.map((each) => each.subject)
      .filter((each) => each !== subject) ?? [];
  const blocked: readonly Finding[] = others.length > 0 ? [{ kind: 'chain-blocked', input, others }] : [];
  return [{ kind: 'stuck-active', input }, ...blocked];
}

/** Which way the input went: to active is right, away from it is the setting upside down; where only levels come, nobody can tell. */
export function polarityOf(moves: readonly Excursion[], input: InputName): readonly Finding[] {
  if (moves.some((each) => each.levelOnly)) return [{ kind: 'not-enabled', input }];
  if (moves.some((each) => each.rest.active === '1' && each.away.active === '0'))
    return [{ kind: 'polarity-reversed', input }];
  if (moves.every((each) => each.rest.active === '?')) return [{ kind: 'polarity-unknown', input }];
  return [];
}

/** Inputs that moved with the answering one every time it did. */
function movedAlong({ presses }: PressEvidence, by: InputName): readonly InputName[] {
  const answered = presses.filter((each) => each.moved.some((moved) => moved.input === by));
  const others = answered[0]?.moved.map((each) => each.input).filter((each) => each !== by) ?? [];
  return others.filter((other) =>
    answered.every((each) => each.moved.some((moved) => moved.input === other)),
  );
}

/**
 * More than one change and one back: once may be a finger that slipped, where as many presses again came clean after
 * it; twice is the contact or its wire.
 */
function isRestless(item: PressEvidence, moves: readonly Excursion[], asked: number): boolean {
  const unclean = moves.filter((each) => each.edges > cleanEdges).length;
  return unclean > 1 || (unclean === 1 && item.presses.length < 2 * asked);
}

/** Bounce is claimed only where the stream is fast enough to have shown it. */
function bounces(item: PressEvidence, moves: readonly Excursion[]): boolean {
  const fast = item.presses.every((each) => each.resolution && each.resolution.median <= slowestForBounce);
  return fast && moves.some((each) => each.bounces > 0);
}

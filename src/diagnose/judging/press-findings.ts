import type { Finding } from '../../model/finding.ts';
import { type InputName, inputOf, type Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { cleanEdges, slowestForBounce } from '../limits.ts';
import type { Excursion } from '../signal/excursion.ts';
import type { PressEvidence } from './press-evidence.ts';

/** What the presses of one switch show to be wrong, `by` being the input that answered them. */
export function findingsOf(
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

/** What an input was reported as before its switch was pressed. */
export function restActive(item: PressEvidence, input: InputName, scene: Scene): string | undefined {
  const moved = item.presses.flatMap((each) => each.moved).find((each) => each.input === input);
  if (moved) return moved.rest.active;
  const point = item.presses[0]?.trace.signals.find((each) => each.input === input)?.points[0];
  const index = scene.now?.inputs.indexOf(input) ?? -1;
  return point?.active ?? scene.now?.active[index];
}

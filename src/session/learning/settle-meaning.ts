import type { Answer } from '../../diagnose/learning/answers.ts';
import { linesToRead } from '../../diagnose/learning/reading-of.ts';
import type { InputName } from '../../model/machine.ts';
import { absent, type InputBinding, present } from '../../model/stream-description.ts';
import type { SettledInput } from './settle-inputs.ts';
import { type Learning, put } from './steps.ts';

export interface BoundInput {
  readonly name: InputName;
  readonly at: InputBinding;
}

/**
 * Whether what stands there while pressed means active or not: the stream alone cannot tell a level from a state after the polarity
 * setting. Inputs that show the same are asked about together.
 */
export function* settleMeaning(settled: readonly SettledInput[]): Learning<readonly BoundInput[]> {
  const groups = new Map<string, SettledInput[]>();
  for (const each of settled) {
    const key = wayOf(each.answer);
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  const bound: BoundInput[] = [];
  for (const group of groups.values()) {
    const shows = group.map(({ name, answer }) => `${name} ${showsOf(answer)}`);
    const { answer } = yield* put({ action: 'confirm', topic: 'means-active', shows });
    for (const { name, answer: found } of group) bound.push({ name, at: binding(found, answer) });
  }
  return bound;
}

function binding(answer: Answer, meant: string | undefined): InputBinding {
  const { series, part, rest, away } = answer;
  const reversed = meant === 'no';
  // As a level, set is high; which of two words is high nobody knows, and nothing is concluded from it.
  const swap = reversed || (meant !== 'yes' && (rest[0] === '1' || rest[0] === present));
  return {
    field: series.field,
    lines: linesToRead(answer),
    part,
    shows: meant === 'yes' || reversed ? 'active' : 'level',
    active: swap ? rest : away,
    inactive: swap ? away : rest,
  };
}

/** Inputs that differ in nothing but their place and name show the same. */
function wayOf({ part, rest, away }: Answer): string {
  const [at = ''] = rest;
  const [pressed = ''] = away;
  if (part.kind === 'whole' && rest.length > 1) return 'named';
  if (part.kind === 'character' && at.toLowerCase() === pressed.toLowerCase())
    return pressed < at ? 'capital' : 'small';
  if (part.kind === 'character' && /[a-z]/i.test(pressed) !== /[a-z]/i.test(at))
    return /[a-z]/i.test(pressed) ? 'letter' : 'no letter';
  return JSON.stringify([part.kind, at, pressed]);
}

function showsOf({ part, rest, away }: Answer): string {
  const [pressed = ''] = away;
  const [at = ''] = rest;
  if (part.kind === 'word' || part.kind === 'letter') {
    const what = part.kind === 'word' ? part.word : part.letter;
    return pressed === absent ? `loses "${what}"` : `has "${what}"`;
  }
  return `"${pressed}" (else "${at}")`;
}

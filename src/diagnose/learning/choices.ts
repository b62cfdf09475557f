import type { InputName } from '../../model/machine.ts';
import type { Answer } from './answers.ts';
import { chanceOf, mutualInformation } from './information.ts';
import type { Trial } from './observed.ts';
import { isSamePlace, type Series } from './series.ts';

/** Things in the stream that tell the same characters: whichever is read, the same is read. */
export interface Choice {
  readonly answers: readonly [Answer, ...Answer[]];
  /** Bits, of those the question could give at most. */
  readonly information: number;
  /** Chance that anything that varies would have followed the schedule so well, whichever of all candidates it was. */
  readonly chance: number;
}

/** More luck than this is not believed. */
export const mostChance = 0.01;

/** Of the lines of something that follows, so many may show it away while it was not asked for: damage on the way. */
const mostStray = 0.01;

export interface Ranking {
  /** What follows the asked schedule, and nothing else does better; several that are not the same place: a tie. */
  readonly choices: readonly Choice[];
  /** Something follows, but so few trials could be chance: ask again. */
  readonly tooFew: boolean;
}

/**
 * Ranks by mutual information what follows the trials asked for. What left its rest in any other trial does not follow. The chance is
 * corrected for the number of candidates that answered in different ways (C. E. Bonferroni, 1936).
 */
export function rankedFor(
  asked: (trial: Trial) => boolean,
  answers: readonly Answer[],
  trials: readonly Trial[],
): Ranking {
  const wanted = trials.map(asked);
  const count = wanted.filter(Boolean).length;
  const candidates = new Set(
    answers.filter(({ left }) => left.some(Boolean)).map(({ left }) => patternOf(left)),
  ).size;
  const following = answers.flatMap((answer) => {
    const both = answer.left.filter((left, i) => left && wanted[i]).length;
    const answered = answer.left.filter(Boolean).length;
    // Once a hand may have slipped; twice is no schedule.
    if (answer.stray > Math.max(2, answer.lines * mostStray)) return [];
    if (both < 2 || both < count - 1 || answered > both) return [];
    const table = { both, asked: count, answered, trials: trials.length };
    const information = mutualInformation(table);
    return [{ answer, information, chance: Math.min(1, chanceOf(table) * candidates) }];
  });
  const most = following.reduce((best, { information }) => Math.max(best, information), 0);
  const best = following.filter(({ information }) => information > most - 1e-9);
  const certain = best.filter(({ chance }) => chance <= mostChance);
  return { choices: byPlace(certain), tooFew: best.length > 0 && certain.length === 0 };
}

const patternOf = (left: readonly boolean[]) => left.map(Number).join('');

function byPlace(
  found: readonly { answer: Answer; information: number; chance: number }[],
): readonly Choice[] {
  const groups: { first: Series; answers: [Answer, ...Answer[]]; information: number; chance: number }[] = [];
  for (const { answer, information, chance } of found) {
    const group = groups.find(({ answers }) =>
      answers.some(({ series }) => series === answer.series || isSamePlace(series, answer.series)),
    );
    if (group) group.answers.push(answer);
    else groups.push({ first: answer.series, answers: [answer], information, chance });
  }
  return groups;
}

/** Other inputs whose presses something follows together with this one's: nobody can tell them apart in this stream. */
export function togetherWith(
  input: InputName,
  answers: readonly Answer[],
  trials: readonly Trial[],
): readonly InputName[] {
  const inputs = [...new Set(trials.flatMap(({ asked }) => (asked.kind === 'press' ? [asked.input] : [])))];
  for (const { left } of answers) {
    const answering = inputs.filter((each) =>
      trials.every(({ asked }, i) => asked.kind !== 'press' || asked.input !== each || left[i]),
    );
    const elsewhere = trials.some(
      ({ asked }, i) => left[i] && (asked.kind !== 'press' || !answering.includes(asked.input)),
    );
    if (!elsewhere && answering.length > 1 && answering.length < inputs.length && answering.includes(input))
      return answering.filter((each) => each !== input);
  }
  return [];
}

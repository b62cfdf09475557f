import type { Outcome } from '../../model/outcomes.ts';
import { type Belief, type Chances, posterior } from './belief.ts';
import { alikeRows, type Trial } from './prospect.ts';

/** From so much doubt on that an answer was wrong it may be asked for again. */
const doubtful = 0.05;

/** Who made a mistake makes the same one again this often: the same hand, the same lever, the same word misunderstood (judgement). */
const habit = 0.3;

/**
 * A deed done again after these outcomes of it: whether the person, the hand or the eye was wrong the first time is open, and drawn
 * anew but for habit; what there is to be seen is as it was. So it tells nothing new but that.
 */
export function again(trial: Trial, before: readonly [Outcome, ...Outcome[]]): Trial {
  const { mistaken, slips } = trial;
  const [first, ...later] = before.map((outcome) => columnOf(trial, outcome));
  const slip = (at: number): number => slips[at] ?? 0;
  const told = (key: number, truth: number, slipped: boolean): number => {
    const anew = slip(key) + (key === truth ? 1 - mistaken : 0);
    return slipped ? (1 - habit) * anew + (key === first ? habit : 0) : anew;
  };
  const chances = trial.chances.map((row) => {
    const states = row.flatMap((chance, truth) => {
      const truly = Math.max(0, chance - slip(truth));
      const slipped = { truth, slipped: true, weight: (slip(first ?? 0) * truly) / (1 - mistaken) };
      return truth === first ? [{ truth, slipped: false, weight: truly }, slipped] : [slipped];
    });
    const weights = states.map(({ truth, slipped, weight }) =>
      later.reduce((product, key) => product * told(key, truth, slipped), weight),
    );
    const total = weights.reduce((sum, each) => sum + each, 0);
    return row.map((_, key) =>
      states.reduce(
        (sum, { truth, slipped }, at) => sum + ((weights[at] ?? 0) / total) * told(key, truth, slipped),
        0,
      ),
    );
  });
  return { ...trial, chances, sameAs: alikeRows(chances) };
}

/** How likely it is, by what is believed now, that this outcome was heard and another was true. */
export function doubtOf(trial: Trial, outcome: Outcome, belief: Belief): number {
  const heard = columnOf(trial, outcome);
  const slip = trial.slips[heard] ?? 0;
  return belief.reduce((sum, share, hypothesis) => {
    const chance = trial.chances[hypothesis]?.[heard] ?? 0;
    const truly = Math.max(0, (chance - slip) / (1 - trial.mistaken)) * (1 - trial.mistaken + slip);
    return chance > 0 ? sum + share * (1 - truly / chance) : sum;
  }, 0);
}

export const isDoubtful = (trial: Trial, outcome: Outcome, belief: Belief): boolean =>
  doubtOf(trial, outcome, belief) >= doubtful;

/** The column of an outcome; what nobody foresaw is the last. */
export function columnOf({ keys }: Pick<Trial, 'keys'>, outcome: Outcome): number {
  const at = keys.indexOf(outcome);
  return at < 0 ? keys.length - 1 : at;
}

/** What is believed after an outcome; as before, where no hypothesis allows it. */
export const believedAfter = (belief: Belief, trial: Trial, outcome: Outcome): Belief =>
  posterior(belief, trial.chances satisfies Chances, columnOf(trial, outcome)) ?? belief;

/** How likely each hypothesis is, by index; sums to 1. */
export type Belief = readonly number[];

/** Chances of each outcome of one test under each hypothesis: `chances[hypothesis][outcome]`, each row summing to 1. */
export type Chances = readonly (readonly number[])[];

export function normalised(weights: readonly number[]): Belief {
  const total = weights.reduce((sum, each) => sum + each, 0);
  if (!(total > 0)) throw new RangeError('A belief needs at least one hypothesis that is not excluded.');
  return weights.map((each) => each / total);
}

/** How likely an outcome is at all. */
export const chanceOf = (belief: Belief, chances: Chances, outcome: number): number =>
  belief.reduce((sum, weight, hypothesis) => sum + weight * (chances[hypothesis]?.[outcome] ?? 0), 0);

/** The belief after an outcome (Bayes); undefined where no hypothesis allows it. */
export function posterior(belief: Belief, chances: Chances, outcome: number): Belief | undefined {
  const weights = belief.map((weight, hypothesis) => weight * (chances[hypothesis]?.[outcome] ?? 0));
  return weights.some((each) => each > 0) ? normalised(weights) : undefined;
}

/** Shannon entropy in bits of weights that sum to 1. */
export const entropy = (weights: readonly number[]): number =>
  weights.reduce((sum, each) => (each > 0 ? sum - each * Math.log2(each) : sum), 0);

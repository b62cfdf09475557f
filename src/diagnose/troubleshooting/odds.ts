import type { Outcome } from '../../model/outcomes.ts';

/** How likely each outcome of a deed is; keys are what is observed, values sum to 1. */
export type Odds<Key extends string = Outcome> = { readonly [Each in Key]?: number };

export const chancesIn = <Key extends string>(odds: Odds<Key>) =>
  Object.entries<number>(odds as Readonly<Record<Key, number>>) as readonly unknown[] as readonly (readonly [
    outcome: Key,
    chance: number,
  ])[];

const summed = <Key extends string>(sum: ReadonlyMap<Key, number>) => Object.fromEntries(sum) as Odds<Key>;

export const sure = <Key extends string>(outcome: Key): Odds<Key> => summed(new Map([[outcome, 1]]));

export function mixed<Key extends string>(
  parts: readonly (readonly [share: number, odds: Odds<Key>])[],
): Odds<Key> {
  const sum = new Map<Key, number>();
  for (const [share, odds] of parts)
    for (const [outcome, chance] of chancesIn(odds))
      sum.set(outcome, (sum.get(outcome) ?? 0) + share * chance);
  return summed(sum);
}

/** Two looks that do not depend on each other, as one outcome. */
export function joined<One extends string, Other extends string, Both extends string>(
  first: Odds<One>,
  second: Odds<Other>,
  as: (one: One, other: Other) => Both,
): Odds<Both> {
  const sum = new Map<Both, number>();
  for (const [one, chance] of chancesIn(first))
    for (const [other, further] of chancesIn(second)) {
      const key = as(one, other);
      sum.set(key, (sum.get(key) ?? 0) + chance * further);
    }
  return summed(sum);
}

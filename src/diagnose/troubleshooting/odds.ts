/** How likely each outcome of a deed is; keys are what is observed, values sum to 1. */
export type Odds = Readonly<Record<string, number>>;

export const sure = (outcome: string): Odds => ({ [outcome]: 1 });

export function mixed(parts: readonly (readonly [share: number, odds: Odds])[]): Odds {
  const sum: Record<string, number> = {};
  for (const [share, odds] of parts)
    for (const [outcome, chance] of Object.entries(odds)) sum[outcome] = (sum[outcome] ?? 0) + share * chance;
  return sum;
}

/** Two looks that do not depend on each other, as one outcome. */
export function joined(first: Odds, second: Odds, as: (one: string, other: string) => string): Odds {
  const sum: Record<string, number> = {};
  for (const [one, chance] of Object.entries(first))
    for (const [other, further] of Object.entries(second)) {
      const key = as(one, other);
      sum[key] = (sum[key] ?? 0) + chance * further;
    }
  return sum;
}

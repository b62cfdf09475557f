import { type Hypothesis, namesOf } from './hypotheses.ts';
import type { Trial } from './prospect.ts';

/**
 * The class of each hypothesis. Hypotheses that every deed left would show alike are of one class: no minute is spent on telling them
 * apart. So are the degrees of one fault, unless one of them looks like something else.
 */
export function alike(hypotheses: readonly Hypothesis[], left: readonly Trial[]): readonly number[] {
  const names = hypotheses.map((each) => namesOf(each).join('+'));
  const looks = hypotheses.map((_, at) => left.map(({ sameAs }) => sameAs[at]).join());
  const shared = new Map<string, Set<string>>();
  for (const [at, look] of looks.entries())
    shared.set(look, (shared.get(look) ?? new Set()).add(names[at] ?? ''));
  const numbers = new Map<string, number>();
  return looks.map((look, at) => {
    const key = shared.get(look)?.size === 1 ? `alone ${names[at]}` : look;
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
}

/** Facts without those that are not known: an absent fact is left out, and not written as nothing. */
export const told = <Facts extends object>(facts: Facts): Facts =>
  Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as Facts;

/** Numbers that look thrown and come out the same for the same seed. */
export interface Random {
  /** From 0 up to, not including, 1. */
  next(): number;
  /** From `low` up to, not including, `high`. */
  within(low: number, high: number): number;
  /** True in this share of calls. */
  happens(share: number): boolean;
}

/**
 * One stream of numbers for one purpose: what is drawn for the bounce of one contact never shifts what is drawn for another, so a
 * fault planted in one place leaves the rest of the machine as it was.
 */
export function randomFor(seed: number, purpose: string): Random {
  let state = hash(`${seed}:${purpose}`);
  // mulberry32 (T. Ettinger, public domain; from memory): 32 bits of state are plenty for a machine with a dozen contacts.
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    within: (low, high) => low + next() * (high - low),
    happens: (share) => next() < share,
  };
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) value = Math.imul(value ^ text.charCodeAt(i), 0x01000193);
  return value | 0;
}

/** From 0 up to, not including, 1. Handed in wherever something is drawn, so that the same seed gives the same answer anywhere. */
export type Random = () => number;

/** splitmix32 (after G. L. Steele and others, 2014; constants from memory): plenty for a few thousand draws. */
export function seeded(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

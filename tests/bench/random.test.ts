import { describe, expect, it } from 'vitest';
import { randomFor } from '../../src/bench/random.ts';

const draw = (seed: number, purpose: string, count = 20_000): readonly number[] => {
  const random = randomFor(seed, purpose);
  return Array.from({ length: count }, () => random.next());
};

describe('numbers that look thrown', () => {
  it('are the same for the same seed and purpose, and others for another of either', () => {
    expect(draw(3, 'bounce x-home', 50)).toEqual(draw(3, 'bounce x-home', 50));
    expect(draw(3, 'bounce x-home', 50)).not.toEqual(draw(4, 'bounce x-home', 50));
    expect(draw(3, 'bounce x-home', 50)).not.toEqual(draw(3, 'bounce x-far', 50));
  });

  it('fill the span from 0 to 1 evenly', () => {
    const tenths = new Array<number>(10).fill(0);
    for (const value of draw(1, 'any'))
      tenths[Math.floor(value * 10)] = (tenths[Math.floor(value * 10)] ?? 0) + 1;
    // 20 000 draws: 2000 a tenth, standard deviation 42; five of them either way.
    for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(212);
  });

  it('let a thing happen in its share of cases', () => {
    const random = randomFor(1, 'share');
    const times = Array.from({ length: 20_000 }, () => random.happens(0.05)).filter(Boolean).length;
    expect(Math.abs(times - 1000)).toBeLessThan(155);
  });
});

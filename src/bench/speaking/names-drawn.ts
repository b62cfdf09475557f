import type { Random } from '../random.ts';

const starts = ['b', 'd', 'f', 'k', 'l', 'm', 'n', 'p', 'r', 's', 't', 'v', 'z', 'br', 'kl', 'st'];
const vowels = ['a', 'e', 'i', 'o', 'u'];
const ends = ['', 'k', 'l', 'm', 'n', 'p', 'r', 's', 't', 'b'];

/** Made-up words, none twice. */
export function nameDrawer(random: Random): () => string {
  const used = new Set<string>();
  const one = <Item>(items: readonly Item[]): Item => items[Math.floor(random.next() * items.length)] as Item;
  return () => {
    for (;;) {
      const second = random.happens(0.5) ? one(starts) + one(vowels) : '';
      const name = one(starts) + one(vowels) + second + one(ends);
      // A word that is also a number in another base would be an unfair riddle.
      if (used.has(name) || /^[a-f]+$/.test(name)) continue;
      used.add(name);
      return name;
    }
  };
}

export function shuffled<Item>(items: readonly Item[], random: Random): readonly Item[] {
  return items
    .map((item) => ({ item, at: random.next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

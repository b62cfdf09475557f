/** A word heard in more lines than this is a word of the stream; damage makes another one each time. */
const usualFrom = 4;
const mostRemembered = 1000;

/**
 * Finds the words of a set that may be damaged ones: nobody knows them, and they have hardly been heard before. `known`: words that mean
 * something, however alike two of them are.
 */
export class StrangeWords {
  private readonly known: ReadonlySet<string>;
  private readonly heard = new Map<string, number>();

  constructor(known: ReadonlySet<string>) {
    this.known = known;
  }

  /** To be asked once a line for each set in it. A byte that became a separator makes two strange words of one. */
  in(set: string): readonly string[] {
    const words = set.split(' ').filter((word) => word !== '' && !this.known.has(word));
    const strange = words.filter((word) => this.isStrange(word));
    return [...strange, ...strange.slice(1).map((word, i) => `${strange[i]} ${word}`)];
  }

  private isStrange(word: string): boolean {
    const times = (this.heard.get(word) ?? 0) + 1;
    if (this.heard.size >= mostRemembered) this.heard.clear();
    this.heard.set(word, times);
    return times < usualFrom;
  }
}

/** One of these may be `word` with a byte changed, dropped or doubled, or run together with its neighbour: then nobody can say that it is not there. */
export const mayBeAmong = (strange: readonly string[], word: string): boolean =>
  strange.some((each) => each.includes(word) || isOneByteOff(each, word));

function isOneByteOff(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1) return false;
  let same = 0;
  while (same < short.length && short[same] === long[same]) same++;
  return short.slice(short.length === long.length ? same + 1 : same) === long.slice(same + 1);
}

/** Written with spaces, hyphens or underscores, in capitals or not, with whichever apostrophe: the same words to a person. */
export const plainly = (word: string): string =>
  word
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[\s_-]+/g, ' ')
    .trim();

/** Edits between two words: letters put in, left out, changed, or two neighbours swapped (restricted Damerau-Levenshtein distance). */
function edits(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const line = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const change = a[row - 1] === b[column - 1] ? 0 : 1;
      let least = Math.min(
        (above[column] ?? 0) + 1,
        (line[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + change,
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        least = Math.min(least, (before[column - 2] ?? 0) + 1);
      line.push(least);
    }
    before = above;
    above = line;
  }
  return above[b.length] ?? 0;
}

/** So much of what was typed is looked at, and so many names are put before a person. */
const longest = 80;
const most = 3;

/** The allowed words a person may have meant, the nearest first: no more than a third of their letters off, else those she wrote a part of. */
export function nearestNames(word: string, allowed: readonly string[]): readonly string[] {
  const meant = plainly(word.slice(0, longest));
  const near = allowed
    .map((each) => ({ each, off: edits(meant, plainly(each)) }))
    .filter(({ each, off }) => off <= (each.length < 3 ? 0 : Math.max(1, Math.floor(each.length / 3))))
    .toSorted((a, b) => a.off - b.off);
  const [first] = near;
  const found =
    first === undefined
      ? allowed.filter((each) => hasPart(plainly(each), meant))
      : near.filter(({ off }) => off <= first.off + 1).map(({ each }) => each);
  const alike = (each: string, at: number) =>
    found.findIndex((other) => plainly(other) === plainly(each)) === at;
  return found.filter(alike).slice(0, most);
}

/** The allowed word a person most likely meant, or undefined where none is near. */
export const nearest = (word: string, allowed: readonly string[]): string | undefined =>
  nearestNames(word, allowed)[0];

/** "Did you mean x-home or y-home?" and what there is, to be said where a name is not known. */
export function namesToTry(word: string, allowed: readonly string[], thereIs: string): string {
  const near = nearestNames(word, allowed);
  if (near.length === 0) return thereIs;
  const either = [near.slice(0, -1).join(', '), ...near.slice(-1)].filter((each) => each !== '');
  return `Did you mean ${either.join(' or ')}? ${thereIs}`;
}

/** Whether whole words of one are the other: "broken" of "broken wire". Fewer than three letters are too little to go by. */
const hasPart = (name: string, part: string): boolean =>
  part.length >= 3 && ` ${name} `.includes(` ${part} `);

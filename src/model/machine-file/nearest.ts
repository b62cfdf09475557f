/** Written with spaces, hyphens or underscores, in capitals or not: the same word to a person. */
const plainly = (word: string): string =>
  word
    .toLowerCase()
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

/** The allowed word a person most likely meant, or undefined where none is near (more than a third of its letters off). */
export function nearest(word: string, allowed: readonly string[]): string | undefined {
  const meant = plainly(word.slice(0, 40));
  let best: { readonly each: string; readonly off: number } | undefined;
  for (const each of allowed) {
    const off = edits(meant, plainly(each));
    const most = each.length < 3 ? 0 : Math.max(1, Math.floor(each.length / 3));
    if (off <= most && (best === undefined || off < best.off)) best = { each, off };
  }
  return best?.each;
}

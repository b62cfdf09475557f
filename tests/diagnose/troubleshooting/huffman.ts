/**
 * The least number of two-way tests, on average, that can tell things of these weights apart: the length of their Huffman code
 * (D. A. Huffman 1952). No order of tests does better, so it never promises too little work. Weights need not sum to 1.
 */
export function huffmanLength(weights: readonly number[] | Float64Array): number {
  const queue = Float64Array.from(weights)
    .filter((each) => each > 0)
    .sort();
  // Merged weights come out in rising order, so a second queue of them needs no sorting.
  const merged: number[] = [];
  let taken = 0;
  let mergedTaken = 0;
  let length = 0;
  const least = (): number => {
    const a = queue[taken];
    const b = merged[mergedTaken];
    if (b === undefined || (a !== undefined && a <= b)) {
      taken++;
      return a ?? 0;
    }
    mergedTaken++;
    return b;
  };
  for (let left = queue.length; left > 1; left--) {
    const both = least() + least();
    length += both;
    merged.push(both);
  }
  return length;
}

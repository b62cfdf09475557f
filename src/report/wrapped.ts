/** Columns of a plain terminal, less two so that a line never touches its edge. */
export const terminalWidth = 78;

/** Lines broken at spaces, none longer than `width` unless a single word is; `first` begins the first line, `rest` each further one. */
export function wrapped(text: string, first = '', rest = '', width = terminalWidth): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let isFresh = true;
  for (const word of text.split(' ')) {
    if (!isFresh && line.length + 1 + word.length > width) {
      lines.push(line);
      line = rest;
      isFresh = true;
    }
    line += isFresh ? word : ` ${word}`;
    isFresh = false;
  }
  return [...lines, line];
}

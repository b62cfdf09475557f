/** Terminal cells a text takes: most signs one, those of East Asian scripts and pictures two, marks that combine none. */
export function cellsOf(text: string): number {
  let cells = 0;
  for (const sign of text) cells += cellsOfSign(sign);
  return cells;
}

const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]/;

const cellsOfSign = (sign: string): number => {
  if (/^\p{M}$/u.test(sign)) return 0;
  return wide.test(sign) || (sign.codePointAt(0) ?? 0) >= 0x1f000 ? 2 : 1;
};

/** The text cut to at most `most` cells, or filled up to exactly that many. */
export function fitted(text: string, most: number): string {
  let kept = '';
  let cells = 0;
  for (const sign of text) {
    const more = cellsOfSign(sign);
    if (cells + more > most) break;
    kept += sign;
    cells += more;
  }
  return kept + ' '.repeat(Math.max(0, most - cells));
}

/** Broken at spaces into lines of at most `most` cells; a word longer than a line is cut. */
export function wrapped(text: string, most: number, measure: (text: string) => number = cellsOf): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= most) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (line !== '' && measure(line) > most) {
      const head = headOf(line, most, measure);
      lines.push(head);
      line = line.slice(head.length);
    }
  }
  return line === '' ? lines : [...lines, line];
}

function headOf(text: string, most: number, measure: (text: string) => number): string {
  const signs = [...text];
  let kept = signs[0] ?? text;
  for (const sign of signs.slice(1)) {
    if (measure(kept + sign) > most) break;
    kept += sign;
  }
  return kept;
}

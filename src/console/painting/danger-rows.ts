import { largest } from './big-letters.ts';
import { wrapped } from './cells.ts';
import { type Canvas, clipped, type Row, row } from './row.ts';

/** The whole window says one thing: stop it. Bars above and below, so that it differs in shape and not only in colour. */
export function dangerRows(text: string, { width, height, glyphs }: Canvas): readonly Row[] {
  const bar = row(glyphs.full.repeat(width), 'caution');
  const words = wrapped(text, width - 2).map((line) => row(` ${line}`, 'strong'));
  const room = Math.max(1, height - words.length - 4);
  const letters = largest('STOP IT NOW', '', { width: width - 2, rows: room, glyphs }).slice(0, room);
  const rows = [bar, ...letters.map((line) => row(` ${line}`, 'marked')), row(''), ...words];
  const filled = [...rows, ...Array.from({ length: Math.max(0, height - rows.length - 1) }, () => row(''))];
  return [...filled.slice(0, Math.max(0, height - 1)), bar].map((each) => clipped(each, width));
}

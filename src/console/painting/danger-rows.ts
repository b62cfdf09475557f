import { large, type Size } from './big-letters.ts';
import { wrapped } from './cells.ts';
import { type Canvas, clipped, type Row, row } from './row.ts';

const sizes: readonly Size[] = ['doubled', 'drawn', 'narrow', 'spaced', 'plain'];
const shout = ['STOP IT', 'NOW'] as const;

/**
 * The whole window says one thing: stop it. Bars above and below, so that it differs in shape and not only in colour; between them, in the
 * middle, what to do, as large as it goes, and why.
 */
export function dangerRows(text: string, canvas: Canvas): readonly Row[] {
  const { width, height, glyphs } = canvas;
  const bar = row(glyphs.full.repeat(width), 'danger');
  const bars = height >= 16 ? [bar, bar] : [bar];
  const room = Math.max(1, height - 2 * bars.length);
  const words = wrapped(text, width - 2);
  const letters = shouted(canvas, Math.max(1, room - words.length - 1));
  const said = [...letters, ...(letters.length + words.length < room ? [''] : []), ...words].slice(0, room);
  const above = Math.floor((room - said.length) / 2);
  const rows = Array.from({ length: room }, (_, at) => row(` ${said[at - above] ?? ''}`, 'strong'));
  return [...bars, ...rows, ...bars].slice(0, height).map((each) => clipped(each, width));
}

/** In one row of letters where the window is wide enough, else in two with a space between them. */
function shouted({ width, glyphs }: Canvas, room: number): readonly string[] {
  for (const size of sizes) {
    const whole = large(shout.join(' '), size, width - 2, glyphs);
    const [one, other] = shout.map((part) => large(part, size, width - 2, glyphs));
    if (!whole || !one || !other) continue;
    const drawn = whole.length <= one.length ? whole : [...one, '', ...other];
    if (drawn.length <= room) return drawn;
  }
  return [shout.join(' ')];
}

import { type Random, randomFor } from '../random.ts';
import { layoutDrawn } from './layout.ts';
import { nameDrawer } from './names-drawn.ts';
import { partWriters } from './parts.ts';
import type { Shape, Speaker } from './shape.ts';

/** A controller that reports in this shape, in words of its own; the same seed gives the same words. */
export function speakerFor(shape: Shape, inputs: number, axes: number, seed: number): Speaker {
  const random = randomFor(seed, 'speaking');
  const writers = partWriters(shape, inputs, axes, random);
  const lay = layoutDrawn(shape, random);
  const chatter = chatterDrawn(randomFor(seed, 'chatter'));
  let owed = 0;
  return (snapshot) => {
    owed += shape.chatter;
    const lines = [...lay(writers.map((write) => write(snapshot)))];
    for (; owed >= 1; owed--) lines.push(chatter());
    return lines;
  };
}

/** Lines about nothing: remarks, echoes, counts. */
function chatterDrawn(random: Random): () => string {
  const draw = nameDrawer(random);
  const words = Array.from({ length: 12 }, draw);
  const word = () => words[Math.floor(random.next() * words.length)] ?? '';
  const forms: readonly (() => string)[] = [
    () => `${word()} ${word()} ${word()}`,
    () => `${word()}: ${Math.floor(random.within(0, 90))} ${word()}`,
    () => `# ${word()} ${random.within(-50, 50).toFixed(2)}`,
    () => `${word()}`,
    () => '',
  ];
  return () => forms[Math.floor(random.next() * forms.length)]?.() ?? '';
}

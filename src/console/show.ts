import { visible } from '../model/visible.ts';
import { wrapped } from '../report/wrapped.ts';
import { asTyped } from './as-typed.ts';

/** Lines on standard output, with nothing left in them that a terminal would act on. */
export const showLines = (lines: readonly string[]): void => {
  process.stdout.write(lines.map((line) => `${visible(asTyped(line))}\n`).join(''));
};

/** Sentences and numbered or bulleted points, broken to the width of a terminal; what goes on stands below its beginning. */
export const showPage = (lines: readonly string[]): void => {
  const broken = lines.flatMap((line) => {
    const head = /^ *(?:\d+\. |- )?/.exec(line)?.[0] ?? '';
    return wrapped(asTyped(line.slice(head.length)), head, ' '.repeat(head.length));
  });
  process.stdout.write(broken.map((line) => `${visible(line)}\n`).join(''));
};

export const showJson = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

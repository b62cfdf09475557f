import { visible } from '../model/visible.ts';
import { wrapped } from '../report/wrapped.ts';
import { asTyped } from './as-typed.ts';

/** Lines on standard output, with nothing left in them that a terminal would act on. */
export const showLines = (lines: readonly string[]): void => {
  process.stdout.write(lines.map((line) => `${visible(asTyped(line))}\n`).join(''));
};

/** A page of sentences and numbered steps, broken to the width of a terminal. */
export const showPage = (page: string): void => {
  const lines = page.split('\n').flatMap((line) => {
    const step = /^ *\d+\. /.exec(line)?.[0] ?? '';
    return wrapped(asTyped(line.slice(step.length)), step, ' '.repeat(step.length));
  });
  process.stdout.write(lines.map(visible).join('\n'));
};

export const showJson = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

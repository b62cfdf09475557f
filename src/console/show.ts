import { visible } from '../model/visible.ts';

/** Lines on standard output, with nothing left in them that a terminal would act on. */
export const showLines = (lines: readonly string[]): void => {
  process.stdout.write(lines.map((line) => `${visible(line)}\n`).join(''));
};

export const showJson = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

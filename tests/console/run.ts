import { vi } from 'vitest';
import { runProgram } from '../../src/console/program.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs work in this process and keeps what it writes. */
export async function kept(work: () => Promise<number>): Promise<Ran> {
  const written = { out: '', err: '' };
  const into = (name: 'out' | 'err') => (text: unknown) => {
    written[name] += String(text);
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation(into('out')),
    vi.spyOn(process.stderr, 'write').mockImplementation(into('err')),
  ];
  try {
    const code = await work();
    return { code, ...written };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

/** One command line, as typed. */
export const tellwire = (...words: readonly string[]): Promise<Ran> => kept(() => runProgram(words));

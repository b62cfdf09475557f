import type { Active, Level } from '../model/reading.ts';
import type { Millis } from '../model/units.ts';
import { counted, timeText } from './figures.ts';

/** What is said of a capture that belongs to no session. */
export const captureWords = {
  bare: (file: string) =>
    `${file} is a capture without a session: nobody was asked anything while it was taken, so no check can be judged. This is what the stream said.`,
  lasted: (time: Millis, lines: number) => `${counted(lines, 'line')} in ${timeText(time)}.`,
  input: (input: string, changes: number, level: Level, active: Active) =>
    `${input}: ${counted(changes, 'change')}; at the end ${levelWords[level]}, ${activeWords[active]}.`,
  sent: (pieces: number) => `${counted(pieces, 'piece')} written to the port by the program beside it.`,
  damaged: (lines: number) => `Damaged after they were written, and passed over: ${counted(lines, 'line')}.`,
  noReport: 'No line of it could be read.',
  nativeTried:
    'No line of it is a native status sentence. Name the description of its stream with --stream; `tellwire learn` writes one.',
  noSession: (file: string) => `${file} is a capture without a session: there is nothing in it to report.`,
  tryReplay:
    '`tellwire replay` shows what the stream said; a session that can be judged is made by commission.',
} as const;

const levelWords: Readonly<Record<Level, string>> = {
  H: 'level high',
  L: 'level low',
  '?': 'level not known',
};
const activeWords: Readonly<Record<Active, string>> = {
  1: 'active',
  0: 'inactive',
  '?': 'active value not known',
};

import { counted } from './figures.ts';

/** What a person who put the tool between a controller and another program is told. */
export const inlineWords = {
  'program-came': 'The program is there.',
  'program-left': 'The program has gone; the line waits for it.',
  'program-refused': 'A second program wanted the line and was refused: two cannot command one machine.',
  'controller-back': 'The controller’s port is back.',
  'controller-lost': (why: string) =>
    `The controller’s port is gone (${why}). What the program sends until it is back is dropped, never sent late.`,
  'program-stuck': (waiting: number) =>
    `The program has read nothing while ${counted(waiting, 'byte')} came for it: it was let go, and may connect again.`,
  'not-sent': (bytes: number) =>
    `${counted(bytes, 'byte')} of the program found no controller and were dropped.`,
  ready: (program: string, beside: string, capture: string) => [
    `Point your program at ${program}.`,
    `To watch or commission beside it, use --port ${beside}; nothing can be sent there.`,
    `Everything that passes is kept in ${capture}.`,
    'The tool adds nothing to the line and takes nothing from it. It cannot stop the machine and is no safety function.',
  ],
  network:
    'Caution: the address can be reached from other computers. Whoever reaches it commands the machine, without a password.',
  summary: ({ fromController, fromProgram, notSent }: InlineCounts): string =>
    `Passed on: ${counted(fromController, 'byte')} of the controller, ${counted(fromProgram - notSent, 'byte')} of the program. Dropped while the port was gone: ${counted(notSent, 'byte')}.`,
} as const;

export interface InlineCounts {
  readonly fromController: number;
  readonly fromProgram: number;
  readonly notSent: number;
}

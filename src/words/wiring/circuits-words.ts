import type { Subject } from '../../model/machine.ts';
import type { FoundWhen, WiredSwitch } from '../../model/wiring-study.ts';
import { listed } from '../figures.ts';

/** Where the kind of contact that a circuit was computed with comes from. */
export const contactFromWords = {
  found: 'found by unplugging',
  declared: 'as the machine file says',
  assumed: 'assumed: neither declared nor found',
} as const satisfies Record<WiredSwitch['contactFrom'], string>;

export const foundHeads = {
  'at once': 'At once',
  'next press': 'At the next press',
  unplugging: 'Only by unplugging',
  never: 'Never',
} as const satisfies Record<FoundWhen, string>;

export const circuitName = (at: number): string => `Circuit ${at + 1}`;

export const circuitSentences = {
  none: 'NOT COMPUTED. The machine file names no circuit that can be computed.',
  at: (name: string) => `Its circuit with the computed voltages: ${name.toLowerCase()}, under Circuits.`,
  without: (subjects: readonly Subject[]) =>
    `NOT COMPUTED for ${listed(subjects)}: the machine file names no circuit that can be computed.`,
  old: 'Shares are for a machine that worked; for a new build they are given with each circuit.',
} as const;

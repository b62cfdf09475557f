import type { SessionFolder } from '../session/folder.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { asWord } from './go-on.ts';

/** The command that has the stream of this very port learned, for the same machine; the bench has a machine file of its own. */
export function learnCommand(
  port: string,
  { machine, speak }: Pick<CommissionFlags, 'machine' | 'speak'>,
  resumed: SessionFolder | undefined,
): string {
  const told = [
    ['port', port],
    ['machine', machine ?? resumed?.file('machine.yaml')],
    ['speak', speak],
  ] as const;
  const options = told.flatMap(([name, word]) => (word === undefined ? [] : [`--${name} ${asWord(word)}`]));
  return ['tellwire learn', ...options].join(' ');
}

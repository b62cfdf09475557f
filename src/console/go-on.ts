import type { SessionFacts } from '../model/session-facts.ts';
import type { CommissionFlags } from './commands/flags.ts';

type Stands = Pick<SessionFacts, 'stopped' | 'register'>;

/** What was given on the command line that no session folder keeps. */
export type GivenAgain = Partial<
  Pick<CommissionFlags, 'baud' | 'operator' | 'fault' | 'allowRequest' | 'ownLine' | 'speak' | 'color'>
>;

/**
 * How a session that stopped before its end, or left a plug out, is gone on with: the whole command, with the port and everything else as it was given. Empty where there is
 * nothing to go on with. `command`: what was called, with its argument.
 */
export function goOnHint(
  { stopped, register }: Stands,
  command: string,
  at: { readonly folder: string; readonly port: string },
  given: GivenAgain,
): readonly string[] {
  if (!stopped && register.length === 0) return [];
  const why = stopped ? 'To go on where it stopped:' : 'To go on with what is still out:';
  return [why, `  ${goOnCommand(command, at, given)}`];
}

/** Bits a second that no one has to name. */
const usualBaud = '115200';

function goOnCommand(
  command: string,
  { folder, port }: { readonly folder: string; readonly port: string },
  { baud, operator, fault = [], allowRequest, ownLine, speak, color }: GivenAgain,
): string {
  const flags = [
    ['out', folder],
    ['port', port],
    ['baud', baud === usualBaud ? undefined : baud],
    ...fault.map((each) => ['fault', each] as const),
    ['speak', speak],
    ['operator', operator],
    ['allow-request', allowRequest],
  ] as const;
  const words = flags.flatMap(([name, value]) => (value === undefined ? [] : [`--${name} ${asWord(value)}`]));
  const bare = [...(ownLine ? ['--own-line'] : []), ...(color === false ? ['--no-color'] : [])];
  return ['tellwire', command, '--resume', ...words, ...bare].join(' ');
}

/** One word of a command line, quoted where a shell would take it apart. */
export function asWord(text: string): string {
  if (/^[\w./:@%+,=-]+$/.test(text)) return text;
  return /["$`\\!]/.test(text) ? `'${text.replaceAll("'", "'\\''")}'` : `"${text}"`;
}

import { registered, usual } from '../diagnose/checks/registry.ts';
import type { Machine } from '../model/machine.ts';
import { ToolError } from '../model/tool-error.ts';
import type { CheckName } from '../model/verdict.ts';
import type { SessionHeader } from '../session/folder.ts';
import type { CommissionFlags } from './commands/flags.ts';
import { checksOption, countOption, onlyOption, timeOption } from './options.ts';

/** What a session is to do. */
export interface Scope {
  readonly checks: readonly CheckName[];
  readonly presses: number;
  readonly restSeconds: number;
  readonly only: readonly string[] | undefined;
  readonly cycles?: number | undefined;
}

export const usualScope: Scope = { checks: usual, presses: 3, restSeconds: 10, only: undefined };

/** The scope that was asked for; a session that is gone on with keeps its own, and asking for another is refused. */
export function scopeOf(flags: CommissionFlags, machine: Machine, resumed: SessionHeader | undefined): Scope {
  const { checks = [], presses, rest, cycles, only = [] } = flags;
  const own: Scope = resumed ? { ...resumed, only: resumed.only } : usualScope;
  const asked: Scope = {
    checks: checks.length === 0 ? own.checks : checksOption(checks, registered),
    presses: presses === undefined ? own.presses : countOption('presses', presses, 1, 30),
    restSeconds: rest === undefined ? own.restSeconds : timeOption('rest', rest, 1, 600),
    cycles: cycles === undefined ? own.cycles : countOption('cycles', cycles, 3, 100),
    only: only.length === 0 ? own.only : onlyOption(only, machine),
  };
  const names = ['checks', 'presses', 'restSeconds', 'only', 'cycles'] as const;
  const unlike = names.find((name) => JSON.stringify(asked[name]) !== JSON.stringify(own[name]));
  if (resumed && unlike !== undefined) {
    const option = `--${unlike.replace('Seconds', '')}`;
    throw new ToolError(
      'session-differs',
      `This session began with another ${option}.`,
      `Leave ${option} out to go on with it, or begin a new session.`,
    );
  }
  return asked;
}

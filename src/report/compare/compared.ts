import { leftOut } from '../../words/left-out.ts';
import type { ReportRecord } from '../record.ts';
import type { Difference } from './difference.ts';
import { differencesOf } from './differences.ts';
import { suggestionsFor } from './suggestions.ts';

export interface Compared {
  /** When each session began, UTC, ISO 8601. */
  readonly old: string;
  readonly new: string;
  readonly machines: {
    readonly old: string;
    readonly new: string;
    /** By the names in the machine files. Of two machines nothing has changed: they are unlike. */
    readonly same: boolean;
  };
  readonly differences: readonly Difference[];
  /** Where to look; none for two machines. */
  readonly suggestions: readonly string[];
}

/** Two sessions beside each other. */
export function compared(old: ReportRecord, now: ReportRecord): Compared {
  const differences = differencesOf(old, now);
  const machines = { old: old.machine.name, new: now.machine.name };
  const same = machines.old === machines.new || Object.values(machines).includes(leftOut);
  return {
    old: old.session.started,
    new: now.session.started,
    machines: { ...machines, same },
    differences,
    suggestions: same ? suggestionsFor(differences, old, now) : [],
  };
}

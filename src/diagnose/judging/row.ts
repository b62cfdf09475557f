import type { FindingKind } from '../../model/finding.ts';
import type { Contact } from '../../model/machine.ts';
import type { Status } from '../../model/verdict.ts';
import type { State } from '../signal/track.ts';

/** Reported rest, pressed, unplugged: 1 active, 0 not. */
export type Row = `${0 | 1}${0 | 1}${0 | 1}`;

/**
 * What the three bits mean, complete. It needs no knowledge of the polarity setting: an unplugged input equals its rest where the
 * contact is normally open, and its pressed state where it is normally closed (follows from an open circuit being one state).
 */
export const rowTable = {
  '011': { status: 'proved', kinds: [] },
  '010': { status: 'limited', kinds: ['break-undetected'] },
  '100': { status: 'failed', kinds: ['polarity-reversed'] },
  '101': { status: 'failed', kinds: ['polarity-reversed', 'break-undetected'] },
  '001': { status: 'failed', kinds: ['never-changes'] },
  '110': { status: 'failed', kinds: ['stuck-active'] },
  '000': { status: 'inconclusive', kinds: ['never-changes'] },
  '111': { status: 'failed', kinds: ['stuck-active', 'already-open'] },
} as const satisfies Record<Row, { status: Status; kinds: readonly FindingKind[] }>;

export interface ReadRow {
  readonly row: Row;
  /** `change`: only levels came, so 0 stands for "as at rest" and the polarity setting is not tested. */
  readonly by: 'active' | 'change';
}

/** The row of three states; undefined where what was reported at rest is not reported throughout. */
export function readRow(rest: State, pressed: State, out: State): ReadRow | undefined {
  const active = [rest.active, pressed.active, out.active];
  if (active.every((bit) => bit !== '?')) return { row: active.join('') as Row, by: 'active' };
  const levels = [rest.level, pressed.level, out.level];
  if (levels.includes('?')) return undefined;
  return { row: levels.map((level) => (level === rest.level ? 0 : 1)).join('') as Row, by: 'change' };
}

/** The contact the row shows: unplugged like rest is normally open, unplugged like pressed is normally closed. */
export function contactOf(row: Row): Exclude<Contact, 'unknown'> | undefined {
  const [rest, pressed, out] = row;
  if (rest === pressed) return undefined;
  return out === rest ? 'normally open' : 'normally closed';
}

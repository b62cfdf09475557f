import { knownOnly } from '../model/known-only.ts';
import type { CheckName, EvidenceLevel, Status } from '../model/verdict.ts';
import type { InputRow } from './schema/input-row.ts';
import type { VerdictRecord } from './schema/verdict.ts';
import { shown } from './shown.ts';

/** What one check says of a switch, on what evidence, and when that evidence was complete. */
export interface Proof {
  readonly check: CheckName;
  readonly status: Status;
  readonly evidence: EvidenceLevel;
  /** UTC, ISO 8601, to the second. Absent where no reading stands behind it. */
  readonly at?: string;
  readonly findings: readonly string[];
  /** What can have caused it, one fault or several at once each. */
  readonly possible: readonly string[];
}

/** The input map of a machine with what stands behind each row. */
export interface MapPage {
  readonly machine: string;
  /** Which session the rows come from, or that there is none. */
  readonly from: string;
  readonly rows: readonly InputRow[];
  readonly proofs: readonly (readonly Proof[])[];
}

export interface Mapped {
  readonly machine: string;
  readonly from: string;
  readonly rows: readonly InputRow[];
  readonly verdicts: readonly VerdictRecord[];
  /** Start of the session, UTC, ISO 8601. */
  readonly started: string;
}

export const mapPage = ({ machine, from, rows, verdicts, started }: Mapped): MapPage =>
  shown({
    machine,
    from,
    rows,
    proofs: rows.map((row) => proofsOf(row, verdicts, started)),
  });

/** Every check that judged the switch, or the input it is on. */
export function proofsOf(
  { subject, input }: InputRow,
  verdicts: readonly VerdictRecord[],
  started: string,
): readonly Proof[] {
  return verdicts
    .filter((each) => each.subject === subject || (each.check === 'rest' && each.subject === input))
    .map(({ check, status, evidence, findings, facts: { possible }, traces }) => {
      const end = Math.max(...traces.map(({ to }) => to));
      return {
        check,
        status,
        evidence,
        findings: findings.map(({ facts }) => facts.kind),
        possible: (possible?.causes ?? []).map((each) => each.join('+')),
        ...knownOnly({ at: momentAfter(started, end) }),
      };
    });
}

/** A moment so many ms after another, in UTC; undefined where either is none. */
export function momentAfter(started: string, after: number): string | undefined {
  const moment = Date.parse(started) + after;
  if (!Number.isFinite(moment) || Math.abs(moment) > 8.64e15) return undefined;
  return new Date(moment).toISOString().replace(/\.\d+Z$/, 'Z');
}

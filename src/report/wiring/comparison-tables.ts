import type { FaultName } from '../../model/fault-names.ts';
import type { FaultStudied, WiringComparison, WiringStudy } from '../../model/wiring-study.ts';
import { percentText } from '../../words/figures.ts';
import { candidateText } from '../../words/wiring/circuit-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { ampText, ohmText, voltText } from '../../words/wiring/quantities.ts';
import { compareStatements, foundWords } from '../../words/wiring/study-words.ts';
import type { Block } from '../document.ts';

/** The two tables of a comparison, for a page or for a terminal. */
export interface ComparisonTables {
  rank(comparison: WiringComparison): readonly Block[];
  dangers(comparison: WiringComparison): readonly Block[];
}

export const letterOf = (at: number): string => String.fromCharCode(65 + (at % 26));

export const wideTables: ComparisonTables = {
  rank: ({ candidates }) => [
    {
      kind: 'table',
      label: 'Candidates, best first',
      columns: [
        { head: 'Wiring', width: 26 },
        { head: 'at once', group: 'Dangerous faults found, old machine' },
        { head: 'with a press', group: 'Dangerous faults found, old machine' },
        { head: 'at once', group: 'New build' },
        { head: 'rest', group: 'Margin' },
        { head: 'pressed', group: 'Margin' },
        { head: 'Contact current' },
        { head: 'Contact up to' },
        { head: 'Leak down to' },
      ],
      rows: candidates.map((study, at) => [
        `${letterOf(at)}: ${candidateText(study.wiring)}`,
        ...figuresOf(study),
      ]),
    },
  ],
  dangers: ({ candidates }) => [
    {
      kind: 'table',
      label: 'Dangerous faults by candidate',
      columns: [{ head: 'Fault', width: 34 }, ...candidates.map((_, at) => ({ head: letterOf(at) }))],
      rows: dangersOf(candidates).map(({ title, faults }) => [
        title,
        ...candidates.map((study) => foundText(study, faults)),
      ]),
    },
  ],
};

/** Share found at once and with a press on an old machine, at once on a new one; margins; currents and resistances. */
export function figuresOf({ works, coverage, margins }: WiringStudy): readonly string[] {
  const shares = [coverage.worked.atOnce, coverage.worked.byPress, coverage.fresh.atOnce];
  return [
    ...shares.map((share) => (works ? percentText(share) : compareStatements.doesNotWork)),
    voltText(margins.atRest),
    voltText(margins.pressed),
    ampText(margins.wettingAmps),
    ohmText(margins.highestContactOhms),
    ohmText(margins.lowestLeakOhms),
  ];
}

export interface Danger {
  readonly title: string;
  /** Faults that are one and the same to a reader: to ground here, to + there. A wiring has one of them at most. */
  readonly faults: readonly FaultName[];
}

/** Every fault that is dangerous in at least one candidate. */
export function dangersOf(candidates: readonly WiringStudy[]): readonly Danger[] {
  const all = candidates.flatMap(({ faults }) => faults.filter(({ dangerous }) => dangerous));
  const faults = [...new Set(all.map(({ fault }) => fault))];
  const titleOf = (fault: FaultName) => faultWords[fault].title;
  return [...new Set(faults.map(titleOf))].map((title) => ({
    title,
    faults: faults.filter((fault) => titleOf(fault) === title),
  }));
}

export const foundOf = (study: WiringStudy, faults: readonly FaultName[]): FaultStudied | undefined =>
  study.faults.find(({ fault }) => faults.includes(fault));

export function foundText(study: WiringStudy, faults: readonly FaultName[]): string {
  const found = foundOf(study, faults);
  if (found === undefined) return 'cannot happen';
  return found.dangerous ? foundWords[found.found] : `harmless, ${foundWords[found.found]}`;
}

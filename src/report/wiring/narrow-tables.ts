import type { FaultName } from '../../model/fault-names.ts';
import type { WiringStudy } from '../../model/wiring-study.ts';
import { candidateText } from '../../words/wiring/circuit-words.ts';
import { compareStatements, foundCodes } from '../../words/wiring/study-words.ts';
import { type Block, text } from '../document.ts';
import { type ComparisonTables, dangersOf, figuresOf, foundOf, letterOf } from './comparison-tables.ts';

/** Columns of codes beside a fault's title, on a line of 78. */
const mostAbreast = 9;

/** For a terminal of 80 columns: the candidates have letters, what a fault does has codes, and both are explained. */
export const narrowTables: ComparisonTables = {
  rank: ({ candidates }) => [
    {
      kind: 'fields',
      fields: candidates.map(({ wiring }, at) => [letterOf(at), candidateText(wiring)] as const),
    },
    {
      kind: 'table',
      label: 'Candidates, best first',
      columns: [
        '',
        'Old, once',
        'Old, press',
        'New, once',
        'Rest',
        'Pressed',
        'Current',
        'Contact',
        'Leak',
      ].map((head) => ({ head })),
      rows: candidates.map((study, at) => [letterOf(at), ...figuresOf(study)]),
    },
    text(compareStatements.columns),
  ],
  dangers: ({ candidates }) => [
    text(compareStatements.codes),
    ...Array.from({ length: Math.ceil(candidates.length / mostAbreast) }, (_, part) =>
      dangerTable(candidates, part * mostAbreast),
    ),
  ],
};

function dangerTable(all: readonly WiringStudy[], from: number): Block {
  const abreast = all.slice(from, from + mostAbreast);
  return {
    kind: 'table',
    label: 'Dangerous faults by candidate',
    columns: [{ head: 'Fault' }, ...abreast.map((_, at) => ({ head: letterOf(from + at) }))],
    rows: dangersOf(all).map(({ title, faults }) => [
      title,
      ...abreast.map((study) => codeOf(study, faults)),
    ]),
  };
}

function codeOf(study: WiringStudy, faults: readonly FaultName[]): string {
  const found = foundOf(study, faults);
  if (found === undefined) return foundCodes.none;
  return found.dangerous ? foundCodes[found.found] : foundCodes.harmless;
}

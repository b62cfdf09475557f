import { caution } from '../words/cautions.ts';
import { momentText } from '../words/figures.ts';
import { blankWords, sectionWords } from '../words/record-words.ts';
import { checkWords, evidenceWord } from '../words/verdict-words.ts';
import { type Cell, list, markOf, type Section, type Table, text } from './document.ts';
import { htmlPage } from './html/page.tsx';
import { inputCsv } from './input-csv.ts';
import { sectionLines } from './markdown.ts';
import { plain } from './markdown-text.ts';
import type { MapPage, Proof } from './proof.ts';
import { mapTable } from './sections/map.ts';
import { shown } from './shown.ts';

/** The input map of a machine as a paper of its own, to hang beside the controller. */
export const mapFormats = {
  md: (page) => {
    const lines = sectionsOf(page).flatMap(sectionLines);
    return [`# ${plain(page.machine)}`, '', plain(page.from), '', ...lines].join('\n');
  },
  html: (page) =>
    htmlPage({
      title: page.machine,
      sort: sectionWords.map.heading,
      heading: page.machine,
      when: page.from,
      sections: sectionsOf(page),
      footer: caution.statusNoProof,
    }),
  csv: inputCsv,
  json: ({ rows, proofs }) =>
    `${JSON.stringify(shown(rows.map((row, i) => ({ ...row, proved: proofs[i] ?? [] }))), null, 2)}\n`,
} satisfies Record<string, (page: MapPage) => string>;

export type MapFormat = keyof typeof mapFormats;
export const mapFormatNames = Object.keys(mapFormats) as readonly MapFormat[];

const sectionsOf = (page: MapPage): readonly Section[] => [
  {
    id: 'map',
    heading: sectionWords.map.heading,
    blocks: [text(sectionWords.map.opening), mapTable(page.rows)],
  },
  { id: 'proof', heading: 'What stands behind it', blocks: [proofTable(page)] },
  {
    id: 'cautions',
    heading: sectionWords.cautions.heading,
    blocks: [list([caution.listens, caution.statusNoProof, caution.noBridge])],
  },
];

function proofTable({ rows, proofs }: MapPage): Table {
  return {
    kind: 'table',
    label: 'Results behind the input map',
    columns: [
      { head: 'Switch', width: 18 },
      { head: 'At rest', width: 12 },
      { head: 'Check', width: 14 },
      { head: 'Result', width: 20 },
      { head: 'Evidence', width: 18 },
      { head: 'When', width: 18 },
    ],
    rows: rows.flatMap((row, i): readonly (readonly Cell[])[] => {
      const own = proofs[i] ?? [];
      const rest = row.found.restLevel ?? blankWords.notTested.toLowerCase();
      if (own.length === 0) return [[row.subject, rest, '', blankWords.notTested, '', '']];
      return own.map((proof, at) => [
        at === 0 ? row.subject : '',
        at === 0 ? rest : '',
        ...proofCells(proof),
      ]);
    }),
  };
}

const proofCells = ({ check, status, evidence, at }: Proof): readonly Cell[] => [
  checkWords[check].title,
  markOf({ check, status }),
  evidenceWord(status, evidence),
  at === undefined ? '' : momentText(at),
];

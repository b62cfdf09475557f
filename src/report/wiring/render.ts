import type { WiringComparison, WiringStudy } from '../../model/wiring-study.ts';
import { candidateText } from '../../words/wiring/circuit-words.ts';
import { studyStatements } from '../../words/wiring/study-words.ts';
import type { Section } from '../document.ts';
import { htmlPage } from '../html/page.tsx';
import { sectionLines } from '../markdown.ts';
import { plain } from '../markdown-text.ts';
import { comparisonSections } from './comparison-sections.ts';
import { wideTables } from './comparison-tables.ts';
import { narrowTables } from './narrow-tables.ts';
import { plainText } from './plain-text.ts';
import { studySections } from './study-sections.ts';
import { wiringJson } from './wiring-json.ts';

export const wiringFormats = ['text', 'md', 'html', 'json'] as const;
export type WiringFormat = (typeof wiringFormats)[number];

/** One wiring in the format asked for. */
export function renderStudy(study: WiringStudy, format: WiringFormat): string {
  if (format === 'json') return wiringJson(study);
  return laidOut(candidateText(study.wiring), studySections(study), format);
}

/** Candidates side by side; the drawing is of the best. */
export function renderComparison(comparison: WiringComparison, format: WiringFormat): string {
  if (format === 'json') return wiringJson(comparison);
  return laidOut(
    'Wirings compared',
    comparisonSections(comparison, format === 'text' ? narrowTables : wideTables),
    format,
  );
}

function laidOut(title: string, sections: readonly Section[], format: Exclude<WiringFormat, 'json'>): string {
  const heading = title.charAt(0).toUpperCase() + title.slice(1);
  if (format === 'text') return plainText(heading, sections);
  if (format === 'md') return [`# ${plain(heading)}`, '', ...sections.flatMap(sectionLines)].join('\n');
  return htmlPage({
    title: heading,
    sort: 'Wiring, computed',
    heading,
    when: '',
    sections,
    footer: studyStatements.computed,
  });
}

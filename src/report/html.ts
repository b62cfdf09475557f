import { sectionWords } from '../words/record-words.ts';
import { htmlPage } from './html/page.tsx';
import type { ReportRecord } from './record.ts';
import { sectionsOf } from './sections/all.ts';
import { titleOf, whenOf } from './title.ts';

/** The record as one HTML file, for the screen and for A4 paper. */
export const html = (record: ReportRecord): string =>
  htmlPage({
    title: titleOf(record),
    sort: 'Commissioning record',
    heading: record.machine.name,
    when: whenOf(record),
    sections: sectionsOf(record),
    footer: sectionWords.untested.opening,
  });

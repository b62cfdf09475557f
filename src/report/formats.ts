import { csv } from './csv.ts';
import { html } from './html.ts';
import { json } from './json.ts';
import { markdown } from './markdown.ts';
import type { ReportRecord } from './record.ts';

/** A report file: its name in the session folder and its whole text. */
export interface ReportFile {
  readonly name: string;
  readonly text: string;
}

export type Format = 'md' | 'html' | 'json' | 'csv';
export type FormatName = Format;

/** Each format is a pure function of the record. */
export const formats = {
  md: (record) => ({ name: 'report.md', text: markdown(record) }),
  html: (record) => ({ name: 'report.html', text: html(record) }),
  json: (record) => ({ name: 'report.json', text: json(record) }),
  csv: (record) => ({ name: 'report.csv', text: csv(record) }),
} satisfies Record<Format, (record: ReportRecord) => ReportFile>;

export const formatNames = Object.keys(formats) as readonly Format[];

/** All files of a report, in the order asked for. */
export const reportFiles = (
  record: ReportRecord,
  names: readonly Format[] = formatNames,
): readonly ReportFile[] => names.map((name) => formats[name](record));

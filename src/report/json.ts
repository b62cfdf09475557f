import type { ReportRecord } from './record.ts';

/** The record itself, one file for programs. */
export const json = (record: ReportRecord): string => `${JSON.stringify(record, null, 2)}\n`;

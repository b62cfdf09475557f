import { visible } from '../model/visible.ts';

/**
 * One record of a CSV file as RFC 4180 writes it, CR LF included. A text that a spreadsheet would take for a formula begins with
 * an apostrophe, so that opening the file runs nothing.
 */
export const csvLine = (cells: readonly (string | number | boolean | undefined)[]): string =>
  `${cells.map(cell).join(',')}\r\n`;

function cell(value: string | number | boolean | undefined): string {
  if (value === undefined) return '';
  if (typeof value !== 'string') return String(value);
  const text = visible(value);
  const harmless = /^[=+\-@]/.test(text) ? `'${text}` : text;
  return /[",]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

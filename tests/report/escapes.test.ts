import { describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { formatNames, formats } from '../../src/report/formats.ts';
import { json } from '../../src/report/json.ts';
import { mapFormats } from '../../src/report/map-formats.ts';
import { mapText } from '../../src/report/map-text.ts';
import { plain } from '../../src/report/markdown-text.ts';
import { mapPage } from '../../src/report/proof.ts';
import { parseRecord } from '../../src/report/record.ts';
import { summaryText } from '../../src/report/summary-text.ts';
import { hostile } from './hostile.ts';

const record = buildRecord(hostile);
const map = mapPage({
  machine: record.machine.name,
  from: 'a session',
  rows: record.inputMap,
  verdicts: record.verdicts,
  started: record.session.started,
});
const outputs = [
  ...formatNames.map((name) => [name, formats[name](record).text] as const),
  ['summary', summaryText(record)] as const,
  ['map', mapText(map)] as const,
  ['map table', mapFormats.md(map)] as const,
];

describe('text from a stream or a file', () => {
  it.each(outputs)('reaches no control byte and no turned direction into %s', (_name, text) => {
    // RFC 4180 ends its lines with CR LF.
    expect(text.replaceAll('\r\n', '\n')).not.toMatch(
      /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069]/,
    );
  });

  it.each(outputs)('shows its escape sequences as text in %s', (_name, text) => {
    expect(text).toMatch(/\\x1b/);
  });

  it('is made visible too where a report is read back that another hand has written to', () => {
    const forged = json(record)
      .replaceAll('Plywood', 'Ply\\u001b[2Jwood')
      .replaceAll('left end', 'left \u202eend');
    expect(forged).toContain('\u202e');
    expect(formats.html(parseRecord(forged)).text).not.toMatch(/[\u001b\u202e]/);
  });

  it('becomes no element in HTML', () => {
    const { text } = formats.html(record);
    expect(text).not.toMatch(/<img|<script/i);
    expect(text).toContain('&lt;img src=x onerror=1>');
    expect(text.match(/<\/style>/g)).toHaveLength(1);
  });

  it('becomes no markup, no link and no new table cell in Markdown', () => {
    const { text } = formats.md(record);
    expect(text).not.toMatch(/<(?!br>|!)[a-z/]/i);
    expect(text).toContain('&lt;img src=x onerror=1&gt;');
    expect(text).not.toMatch(/(?<!\\)\]\(/);
    expect(text).not.toContain('http://x');
    const cells = (line: string) => line.replaceAll('\\|', '').split('|').length;
    const rows = text.split('\n').filter((line) => line.startsWith('|'));
    rows.forEach((row, i) => {
      const before = rows[i - 1];
      if (before && text.includes(`${before}\n${row}`)) expect(cells(row)).toBe(cells(before));
    });
  });

  it('begins no list and no heading in Markdown', () => {
    expect(plain('- a')).toBe('\\- a');
    expect(plain('1. a')).toBe('1\\. a');
    expect(plain('# a')).toBe('\\# a');
    expect(plain('5 V')).toBe('5 V');
  });
});

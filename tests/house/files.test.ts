import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, it } from 'vitest';

const filesIn = (folder: string): { path: string; text: string; lines: number }[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      const text = readFileSync(path, 'utf8');
      return { path: path.split(sep).join('/'), text, lines: text.split('\n').length - 1 };
    });

const sources = filesIn('src');
const tests = filesIn('tests');

describe('the house', () => {
  it('has files one can read in one go: 200 lines at most, tests 250, half of them below 70', () => {
    expect(sources.filter((file) => file.lines > 200).map((file) => `${file.path}: ${file.lines}`)).toEqual(
      [],
    );
    expect(tests.filter((file) => file.lines > 250).map((file) => `${file.path}: ${file.lines}`)).toEqual([]);
    const lengths = sources.map((file) => file.lines).sort((a, b) => a - b);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThanOrEqual(70);
  });

  it('names files and folders in lower case with hyphens, and has no room for leftovers', () => {
    for (const { path } of [...sources, ...tests]) {
      expect(path).toMatch(/^[a-z0-9-]+(\/[a-z0-9-]+)*(\.test|\.d)?\.tsx?$/);
      expect(path).not.toMatch(/\/(utils?|helpers?|misc|common|lib)(\/|\.)/);
    }
  });

  it('switches no check of its types or its style off', () => {
    const trust = /@ts-(ignore|expect-error|nocheck)|biome-ignore/;
    expect(sources.filter((file) => trust.test(file.text)).map((file) => file.path)).toEqual([]);
  });
});

/** What would make a verdict or a report depend on when, where or how often it is made. */
const ambient = [
  ['a clock', /\bDate\.now\b|\bnew Date\(\)|\bperformance\.now\b|\bprocess\.hrtime\b|\bDate\(\)/],
  ['chance', /\bMath\.random\b|\brandomUUID\b|\bgetRandomValues\b/],
  ['the machine it runs on', /\bprocess\.|\bglobalThis\b|\bnavigator\b|\bfetch\(/],
  ['a timer', /\bset(Timeout|Interval|Immediate)\b/],
] as const;
const locale =
  /\bIntl\b|\.toLocale\w+\(|\.localeCompare\(|new Date\([^)]+\)\.(get(?!UTC|Time)|to(?!ISO|JSON))/;

describe('judging and reporting', () => {
  const pure = sources.filter((file) => /^src\/(model|words|diagnose|report)\//.test(file.path));

  it.each(ambient)('never look at %s', (_, pattern) => {
    expect(pure.length).toBeGreaterThan(50);
    expect(pure.filter((file) => pattern.test(file.text)).map((file) => file.path)).toEqual([]);
  });

  it('format nothing by the language or the place of the computer, nor does any other room', () => {
    expect(sources.filter((file) => locale.test(file.text)).map((file) => file.path)).toEqual([]);
  });

  it('would be caught if they did', () => {
    const caught = (text: string) => ambient.some(([, pattern]) => pattern.test(text)) || locale.test(text);
    for (const text of [
      'Date.now()',
      'new Date()',
      'Math.random()',
      'process.env',
      'setTimeout(f)',
      'x.toLocaleString()',
      'new Intl.NumberFormat()',
      'new Date(at).getHours()',
    ])
      expect(caught(text)).toBe(true);
    for (const text of ['new Date(at).toISOString()', 'const process = 1', 'dated()', 'x.toFixed(2)'])
      expect(caught(text)).toBe(false);
  });
});

import { describe, expect, it } from 'vitest';
import { dangerRows } from '../../src/console/painting/danger-rows.ts';
import { glyphsFor } from '../../src/console/painting/glyphs.ts';
import { textOf } from '../../src/console/painting/row.ts';

const text = 'Stop it now, at the real stop. X runs away from its home switch.';

describe.each([
  ['block signs', 'C.UTF-8'],
  ['plain signs', 'C'],
])('the window of a warning, in %s', (_, locale) => {
  const glyphs = glyphsFor({ LC_ALL: locale });

  it.each([
    [80, 24],
    [120, 40],
    [200, 60],
    [60, 18],
    [40, 12],
    [24, 8],
  ])('is full from edge to edge at %i by %i: bars around what to do and why', (width, height) => {
    const rows = dangerRows(text, { width, height, glyphs, now: 0 }).map(textOf);
    expect(rows).toHaveLength(height);
    expect(rows.every((row) => row.length <= width)).toBe(true);
    for (const bar of [rows[0], rows.at(-1)]) expect(bar).toBe(glyphs.full.repeat(width));
    const said = rows
      .slice(1, -1)
      .map((row) => row.trim())
      .join(' ')
      .replace(/ +/g, ' ');
    expect(said).toContain(text);
  });

  it('shouts in letters of five rows in a usual window, its words apart', () => {
    const rows = dangerRows(text, { width: 80, height: 24, glyphs, now: 0 }).map(textOf);
    const drawn = rows.slice(2, -2).map((row) => row.includes(glyphs.full.repeat(2)));
    const blocks = drawn
      .map((is) => (is ? 'x' : ' '))
      .join('')
      .trim()
      .split(/ +/);
    expect(blocks).toEqual(['xxxxx', 'xxxxx']);
  });
});

import { describe, expect, it } from 'vitest';
import { large, largest } from '../../src/console/painting/big-letters.ts';
import { blockGlyphs, letterGlyphs } from '../../src/console/painting/glyphs.ts';
import { canDraw, dotsOf } from '../../src/console/painting/letter-shapes.ts';

describe('large letters', () => {
  it('has a shape for every capital, digit and the signs of an instruction, no two alike', () => {
    const signs = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-.,:?!/()+…■□'];
    const shapes = signs.map((sign) => JSON.stringify(dotsOf(sign)));
    expect(signs.every(canDraw)).toBe(true);
    expect(new Set(shapes).size).toBe(signs.length);
  });

  it('draws five rows of dots in three rows of half blocks', () => {
    expect(large('LT', 'drawn', 20, blockGlyphs)).toEqual(['█    ▀▀█▀▀', '█      █', '▀▀▀▀   ▀']);
  });

  it('draws with letters alone where there are no blocks', () => {
    expect(large('LT', 'drawn', 20, letterGlyphs)).toEqual([
      '#    #####',
      '#      #',
      '#      #',
      '#      #',
      '####   #',
    ]);
  });

  it('never cuts a word in two to draw it', () => {
    expect(large('MICROSWITCH', 'drawn', 30, blockGlyphs)).toBeUndefined();
  });

  it('prefers the first clause in large letters to the whole in small ones', () => {
    const rows = largest('Press', 'left end, below the chain', { width: 78, rows: 6, glyphs: blockGlyphs });
    expect(rows).toHaveLength(6);
    expect(rows.join('')).not.toMatch(/[A-Z]/i);
  });

  it('writes scripts it cannot draw as they are', () => {
    expect(largest('Press', '左端', { width: 78, rows: 8, glyphs: blockGlyphs }).join('\n')).toContain(
      '左 端',
    );
  });
});

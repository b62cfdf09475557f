import { describe, expect, it } from 'vitest';
import { repeatFields } from '../../src/words/motion/repeat-words.ts';
import { repeat } from '../report/watched.ts';

const said = (facts: typeof repeat) => Object.fromEntries(repeatFields(facts));

describe('the figures of repeated homings', () => {
  it('stand with how well so few runs know them, and with what makes that doubtful', () => {
    const fields = said(repeat);
    expect(fields['Mean trip']).toBe(
      '−0.147 mm, the true one between −0.154 mm and −0.139 mm (95 %, Student)',
    );
    expect(fields['The same, for so few runs']).toMatch(/^0\.011 mm \(s\/c4\)/);
    expect(fields['Runs depend on each other']).toMatch(/correlation −0\.71/);
  });

  it('say nothing of what is not known', () => {
    const { mean95: _, unbiased: __, lagOne: ___, ...bare } = repeat;
    const fields = said(bare);
    expect(fields['Mean trip']).toBe('−0.147 mm');
    expect(Object.keys(fields)).not.toContain('The same, for so few runs');
    expect(Object.keys(fields)).not.toContain('Runs depend on each other');
  });
});

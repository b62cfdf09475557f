import { describe, expect, it } from 'vitest';
import { missShareAtMost95 } from '../../src/model/statistics.ts';
import { ms, share } from '../../src/model/units.ts';
import { momentText, percentText, timeText } from '../../src/words/figures.ts';
import {
  pressStatement,
  resolutionStatement,
  restStatement,
  rowStatement,
} from '../../src/words/statements.ts';

describe('what is said of a result', () => {
  // Exact one-sided binomial bound for no miss in n: Eypasch et al., BMJ 311 (1995) 619-620; n = 3 and 5 worked by hand: 1 - 0.05^(1/n).
  it.each([
    [3, 'about 63 %'],
    [5, 'about 45 %'],
    [10, 'about 26 %'],
    [20, 'about 14 %'],
    [30, 'about 9.5 %'],
    [100, 'about 3 %'],
  ])('%i of as many presses answered leave %s unseen, and show wiring, not reliability', (n, bound) => {
    const said = pressStatement({ asked: n, answered: n, missShareAtMost95: missShareAtMost95(n) });
    expect(said).toContain(`${n} of ${n} answered`);
    expect(said).toContain(bound);
    expect(said).toMatch(/shows the wiring, not reliability/);
  });

  it('never turns a missed press into a percentage', () => {
    const said = pressStatement({ asked: 3, answered: 2 });
    expect(said).toContain('2 of 3 answered');
    expect(said).not.toMatch(/\d %/);
  });

  it('rounds the shortest sure pulse up, so that the bound still holds', () => {
    const seen = {
      reports: 40,
      median: ms(16),
      longest: ms(33.4),
      surePulse: ms(33.4),
      lost: 2,
      unreadable: 0,
    };
    expect(resolutionStatement(seen)).toContain('shorter than 34 ms');
    expect(resolutionStatement(seen)).toContain('2 reports lost');
  });

  it('says of an input that kept still that it has proved nothing more', () => {
    expect(restStatement({ level: 'L', active: '0', quietFor: ms(10_000), edges: 0 })).toBe(
      'Steady for 10 s: inactive, level low. This proves nothing more: a cut wire is steady too.',
    );
  });

  it('says of a row of levels alone that the setting was not tested', () => {
    expect(rowStatement({ bits: '010', by: 'change' })).toMatch(
      /unplugged as at rest.*setting was not tested/,
    );
    expect(rowStatement({ bits: '011', by: 'active' })).toBe(
      'rest inactive, pressed ACTIVE, unplugged ACTIVE',
    );
  });

  it('gives no more digits than a status stream can carry', () => {
    expect(timeText(ms(16.0004))).toBe('16 ms');
    expect(timeText(ms(6.66))).toBe('6.7 ms');
    expect(timeText(ms(9_999.6))).toBe('10 s');
    expect(timeText(ms(12_345))).toBe('12.3 s');
    expect(percentText(share(0.0999))).toBe('10 %');
  });

  it('shows a stored moment as it was stored, in UTC', () => {
    expect(momentText('2026-02-14T09:05:41.250Z')).toBe('2026-02-14 09:05 UTC');
    expect(momentText('yesterday')).toBe('yesterday');
  });
});

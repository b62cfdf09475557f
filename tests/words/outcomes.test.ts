import { describe, expect, it } from 'vitest';
import { shareText } from '../../src/words/cause/cause-words.ts';
import { outcomeText } from '../../src/words/cause/outcome-words.ts';

describe('what a test came to, told to someone far away', () => {
  it('says yes or no of something', () => {
    expect(outcomeText('lever', 'yes')).toBe('yes, it is in');
    expect(outcomeText('settings', 'no')).toBe('no, none of them is wrong');
    expect(outcomeText('lamp', 'off')).toBe('not lit');
    const looks = ['lever', 'face', 'settings', 'blades', 'gap', 'bracket', 'clip'] as const;
    for (const deed of looks)
      for (const said of ['yes', 'no']) expect(outcomeText(deed, said).length).toBeGreaterThan(6);
  });

  it('never calls a thing that may happen 0 % likely, nor one that may not 100 %', () => {
    expect([0.001, 0.0099, 0.01, 0.5, 0.99, 0.996].map(shareText)).toEqual([
      'less than 1 %',
      'less than 1 %',
      'about 1 %',
      'about 50 %',
      'about 99 %',
      'over 99 %',
    ]);
  });
});

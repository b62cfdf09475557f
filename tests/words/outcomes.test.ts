import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../../src/model/every-outcome.ts';
import { shareText } from '../../src/words/cause/cause-words.ts';
import { outcomeText } from '../../src/words/cause/outcome-words.ts';

describe('what a test came to, told to someone far away', () => {
  it('says yes or no of something', () => {
    expect(outcomeText('lever', 'yes')).toBe('yes, it is in');
    expect(outcomeText('settings', 'no')).toBe('no, none of them is wrong');
    expect(outcomeText('lamp', 'off')).toBe('not lit');
    const looks = ['lever', 'face', 'settings', 'blades', 'gap', 'bracket', 'clip'] as const;
    for (const deed of looks)
      for (const said of ['yes', 'no'] as const) expect(outcomeText(deed, said).length).toBeGreaterThan(6);
  });

  it('says what a push, a plug and a neighbour came to, each part by itself', () => {
    expect(outcomeText('press', 'still; another')).toBe('no answer; another input answered');
    expect(outcomeText('tap', 'to open 1, stays')).toBe('answered: active, line open, and stayed so');
    expect(outcomeText('carriage', 'to conducting, bounces; other end')).toBe(
      'answered: line conducting, with bounce; the input of the other end of the axis answered',
    );
    expect(outcomeText('unplug-switch', 'open 0')).toBe('inactive, line open');
    expect(outcomeText('link-switch', '1, linked jumps')).toBe('out: active; joined: jumping to and fro');
    expect(outcomeText('neighbour', 'this one')).toBe('this input answered in its place');
    expect(outcomeText('ohms-pull', 'bin 3')).toBe('over 1 Mohm');
    expect(outcomeText('amps-open', 'bin 2')).toBe('1 to 2 mA');
    expect(outcomeText('press', 'unforeseen')).toMatch(/something else/);
  });

  it('says no two outcomes of a deed alike, but for readings that its limits do not divide', () => {
    for (const deed of ['press', 'link-switch', 'rest', 'neighbour', 'lamp', 'lever'] as const) {
      const said = everyOutcome
        .map((each) => outcomeText(deed, each))
        .filter((each) => !each.startsWith('something else'));
      expect([deed, new Set(said).size]).toEqual([deed, said.length]);
      expect(said.length).toBeGreaterThan(1);
    }
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

import { describe, expect, it } from 'vitest';
import { causeTitle } from '../../src/words/cause/cause-words.ts';

describe('the title of a cause', () => {
  it('says which other input it concerns, where that is known and has a part in it', () => {
    expect(causeTitle(['inputs-crossed'], 'y-home')).toBe('Two inputs crossed, this one and y-home');
    expect(causeTitle(['inputs-crossed'], undefined)).toBe('Two inputs crossed');
    expect(causeTitle(['signal-core-open'], 'y-home')).not.toMatch(/y-home/);
    expect(causeTitle([], 'y-home')).not.toMatch(/y-home/);
  });

  it('tells several faults at once as such', () => {
    expect(causeTitle(['inputs-crossed', 'polarity-inverted'], 'y-home')).toMatch(
      /^Two inputs crossed, this one and y-home, and at once: /,
    );
  });
});

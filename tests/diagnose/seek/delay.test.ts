import { describe, expect, it } from 'vitest';
import { measureSeeks } from '../../../scripts/seek-runs.mjs';
import { SeekWatch } from '../../../src/diagnose/seek/watch.ts';

describe('over five hundred machines with flicker, jitter and lost reports', () => {
  const { wrongWay, rightWay } = measureSeeks(SeekWatch, 500);

  it('the wrong way is raised within two reports after the true motion passed two position steps', () => {
    expect(wrongWay).toHaveLength(500);
    expect(wrongWay.filter(({ delay }) => delay === undefined || delay > 2)).toEqual([]);
  });

  it('nothing is ever raised on a right-way seek', () => {
    expect(rightWay).toHaveLength(500);
    expect(rightWay.filter(({ alarms }) => alarms.length > 0)).toEqual([]);
  });
});

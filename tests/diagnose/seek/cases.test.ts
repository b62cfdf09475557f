import { describe, expect, it } from 'vitest';
import { streamCases } from './cases.ts';
import { play } from './played.ts';

describe('what a seek can have been, by the stream alone', () => {
  it.each(streamCases)('$name', ({ played, left }) => {
    expect(play(played).names).toEqual(left);
  });
});

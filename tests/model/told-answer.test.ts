import { describe, expect, it } from 'vitest';
import { toldAs } from '../../src/model/ask.ts';

describe('what was answered', () => {
  it('has a number with the answer that is a number', () => {
    expect(toldAs('value', 4.98)).toEqual({ answer: 'value', value: 4.98 });
    expect(toldAs('value', 0)).toEqual({ answer: 'value', value: 0 });
  });

  it('has no number with any other answer, and is no answer where its number is missing', () => {
    expect(toldAs('done', 4.98)).toEqual({ answer: 'done' });
    expect(toldAs(undefined, 4.98)).toEqual({});
    expect(toldAs('value', undefined)).toEqual({});
  });
});

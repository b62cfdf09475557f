import { describe, expect, it } from 'vitest';
import { sumDigits } from '../../../src/transport/stream/checksum.ts';
import { readSentence } from '../../../src/transport/stream/native-sentences.ts';
import { published, publishedDamaged } from './published-sentences.ts';

const parts = (sentence: string) => /^\$(.*)\*(..)$/.exec(sentence)?.slice(1) ?? [];

describe('the sum of a sentence', () => {
  it.each(published)('agrees with $text ($from)', ({ text }) => {
    const [body = '', sum] = parts(text);
    expect(sumDigits(body)).toBe(sum);
  });

  it('keeps its leading zero', () => {
    const sums = published.map(({ text }) => parts(text)[1]);
    expect(sums).toContain('0B');
  });

  it('does not agree with the copy published as damaged', () => {
    const [body = '', sum] = parts(publishedDamaged);
    expect(sumDigits(body)).not.toBe(sum);
    expect(readSentence(publishedDamaged)).toEqual({ kind: 'unreadable', why: 'wrong-sum' });
  });

  it.each(published)(
    'is right and the sentence another family’s: $text is unknown, not damaged',
    ({ text }) => {
      expect(readSentence(text)).toEqual({ kind: 'unreadable', why: 'unknown-sentence' });
    },
  );
});

import { describe, expect, it } from 'vitest';
import { noticeWords } from '../../src/words/notice-words.ts';

const said = (
  line: string,
  isDescribed = false,
  learn: string | undefined = 'tellwire learn --port COM3',
): string => noticeWords['nothing-understood']('COM3', { line, isDescribed, learn });

describe('a stream of which nothing is understood', () => {
  it('is shown by a line as it was heard, and is followed by the command that learns it', () => {
    expect(said('pos=1.0;sw=0110')).toContain('As heard: "pos=1.0;sw=0110".');
    expect(said('x')).toContain(
      'stop here and run `tellwire learn --port COM3`, then begin again with --stream',
    );
  });

  it('sends nothing to the terminal that it would act on, and no more than a line', () => {
    expect(said('\u001b[2J\u0007go')).toContain('"\\x1b[2J\\x07go"');
    const [, shown = ''] = /As heard: "(.*?)"/.exec(said('w'.repeat(500))) ?? [];
    expect(shown).toHaveLength(60);
  });

  it('is told otherwise where a description is in use that fits nothing', () => {
    expect(said('x', true)).toMatch(/The stream description fits no report/);
    expect(said('x', true)).not.toContain('Native sentences');
  });
});

import { describe, expect, it } from 'vitest';
import { ms } from '../../../src/model/units.ts';
import { describedDecoder } from '../../../src/transport/stream/description/described-decoder.ts';
import { readDescription } from '../../../src/transport/stream/description/read.ts';

const text = `stream: invented
agree: 2
inputs:
  left: { field: "hears.*", word: tolm, shows: active, lines: { begins: clock } }
  right: { field: "hears.*", word: telm, shows: active, lines: { begins: clock } }
`;

/** What is told of left and right, report by report. */
function told(...sets: readonly string[]): readonly string[] {
  const { description } = readDescription(text);
  if (!description) throw new Error('it reads');
  const decoder = describedDecoder(description);
  const lines = sets.map((set, i) => ({ arrived: ms(i * 100), text: `clock:${i} hears:${set}`, cut: 0 }));
  return [...lines.flatMap((line) => decoder.decode(line)), ...decoder.gap(ms(9999), 'lost-port')].flatMap(
    (each) => (each.kind === 'status' ? [each.active.join('')] : []),
  );
}

describe('where lines arrive damaged, a word with one wrong byte is no word that went away', () => {
  it.each([
    ['a byte changed', 'to\xeem'],
    ['a byte changed into a separator', 'to,m'],
    ['a byte dropped', 'tom'],
    ['a byte doubled', 'tollm'],
    ['run together with another', 'tolm!brus'],
  ])('%s, twice running', (_, damaged) => {
    expect(told('tolm', 'tolm', damaged, damaged, 'tolm', 'tolm').map(([left]) => left)).toEqual([
      ...'11??11',
    ]);
  });

  it('a word that keeps coming is a word of the stream, however alike', () =>
    expect(told('', ...Array.from({ length: 7 }, () => 'tolx')).map(([left]) => left)).toEqual(
      [...'0???0000'].slice(0, 8),
    ));

  it('a word that is gone is gone', () =>
    expect(told('tolm', 'tolm', '', '', '')).toEqual(['10', '10', '00', '00', '00']));

  it('the word of another input, however alike, is that input', () =>
    expect(told('tolm', 'tolm', 'telm', 'telm', 'telm')).toEqual(['10', '10', '01', '01', '01']));
});

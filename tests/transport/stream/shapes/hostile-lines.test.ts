import { expect, it } from 'vitest';
import { numberIn } from '../../../../src/model/stream-description.ts';
import { ms } from '../../../../src/model/units.ts';
import { lineSplitter } from '../../../../src/transport/line-splitter.ts';
import { longestLine, takeApart } from '../../../../src/transport/stream/shapes/fields.ts';

const pathsOf = (line: string) => takeApart(line).fields.map(({ path, text }) => `${path} ${text}`);

it.each([
  ['nested ten thousand deep', '['.repeat(10_000)],
  ['nested JSON', '{"a":'.repeat(10_000)],
  ['four hundred figures', '9'.repeat(400)],
  ['escape sequences without end', '\x1b['.repeat(5000)],
  ['names of names', 'a:'.repeat(5000)],
  ['quotes', '"'.repeat(8000)],
])('a hostile line costs little: %s', (_, line) => {
  const before = performance.now();
  expect(takeApart(line).fields.length).toBeLessThan(600);
  expect(performance.now() - before).toBeLessThan(1500);
});

it('ten megabytes without an end are one line of bounded length', () => {
  const splitter = lineSplitter(longestLine);
  for (let i = 0; i < 160; i++) expect(splitter.push(new Uint8Array(65_536).fill(0x61), ms(i))).toEqual([]);
  const [line] = splitter.push(Uint8Array.of(10), ms(200));
  expect(line?.text).toHaveLength(longestLine);
  expect(line?.cut).toBe(160 * 65_536 - longestLine);
});

it('a name that programs trip over is a name like any other', () => {
  expect(pathsOf('{"__proto__":{"bak":1}}')).toEqual(['__proto__.bak 1']);
  expect(({} as Record<string, unknown>)['bak']).toBeUndefined();
});

it('a figure too long to be one is none', () => {
  expect(numberIn('9'.repeat(400))).toBeUndefined();
  expect(numberIn('12.5mm')).toBe(12.5);
  expect(numberIn('-0.125')).toBe(-0.125);
});

it('what stands before a colon, an equals sign or a bracket names what follows', () => {
  expect(pathsOf('zin=0,1;pog(1.5 2.5)')).toEqual(['zin 0', 'zin.1 1', 'pog.0 1.5', 'pog.1 2.5']);
  expect(pathsOf('\x1b[31mzin: 4\x1b[0m')).toEqual(['zin 4']);
});

it('a set of words is there also where it holds none', () => {
  expect(pathsOf('held= dav=mur')).toContain('held.* ');
  expect(pathsOf('held=ka+mo dav=mur')).toContain('held.* ka mo');
});

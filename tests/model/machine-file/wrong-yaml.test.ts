import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';
import { starterFile } from '../../../src/model/machine-file/starter.ts';
import { file, input, marked, places, told } from './told-wrong.ts';

describe('text that is no plain YAML is told where it breaks', () => {
  told([
    [
      'a merge key',
      file('  a: { duty: [limit] }\n  >><<: { duty: [limit] }'),
      'inputs.<<',
      '<<',
      'lower-case',
      'write',
    ],
    [
      'an alias',
      file('  a: { duty: &d [limit] }\n  b: { duty: >>*d }'),
      'inputs.b.duty',
      '*d',
      'the value itself',
      'write the value out',
    ],
    ['a tag', input('place: >>!!js/function x'), '', 'a tag', 'without a tag', 'take the !'],
    [
      'a key that is a list',
      file('  a: { duty: [limit] }\n  ? >>[a, b]\n  : {}'),
      'inputs',
      'a key that is no word',
      'a word',
      'name',
    ],
    ['a tab', 'machine: m\naxes:\n>>\tX: {}\n', '', 'Tabs', 'spaces', 'spaces'],
    [
      'a second document',
      'machine: m\naxes: {}\n>>---\nmachine: n\n',
      '',
      'a second document',
      'one document',
      '---',
    ],
    ['a colon in a value', 'axes: {}\nmachine: >>mill: old\n', '', 'a second colon', 'key: value', 'quotes'],
    [
      'a line of prose',
      '>>Notes on the mill\nmachine: m\naxes: {}\n',
      '',
      'without a colon',
      'key: value',
      '#',
    ],
    ['an empty file', '>>', '', 'an empty file', 'machine', 'starter'],
    ['a list', '>>- a\n- b\n', '', 'no named entries', 'machine', 'starter'],
    ['UTF-16 read as UTF-8', 'm>>\u0000a\u0000', '', 'not UTF-8', 'UTF-8', 'save'],
    ['bytes of an old code page', 'machine: m\nstand: T>>\ufffdr\n', '', 'not UTF-8', 'UTF-8', 'save'],
  ]);

  it('with what is wrong before it, and without what only the break brought about', () => {
    const { text, at } = marked('machine: m\nunits: >>ell\ninputs:\n  a: {duty: [limit]\n>>axes: {}\n');
    expect(places(text).map((place) => place.split(' ')[0])).toEqual(at);
  });
});

describe('a file that is no YAML at all', () => {
  const letter = `Dear Ann,\nhere is: what you asked for: the list\n\t${'{ of: all [\n\t'.repeat(30)}`;

  it('is told once where it breaks first, and how often more', () => {
    const { problems = [] } = readMachineFile(letter);
    const [first, more] = problems;
    expect(problems).toHaveLength(2);
    expect(first).toMatchObject({ line: 1, column: 1 });
    expect(Number(/^(\d+) further places/.exec(more?.found ?? '')?.[1])).toBeGreaterThan(3);
    expect(more?.tryNext).toContain('the right file');
  });

  it('is not taken for one by two slips of the pen, which are both told', () => {
    const slips = 'machine: mill: old\nstand: `here`\naxes: {}\n';
    expect(readMachineFile(slips).problems?.map(({ line }) => line)).toEqual([1, 2]);
  });
});

/** Shapes that have brought YAML readers to their knees, each as large as a file may be. */
const hostile: readonly (readonly [string, string])[] = [
  ['lists without end', '['.repeat(130_000)],
  ['maps without end', '{a: '.repeat(30_000)],
  ['dashes without end', '- '.repeat(60_000)],
  ['keys without end', '? '.repeat(60_000)],
  ['closing brackets', '}'.repeat(130_000)],
  ['quotes', '"'.repeat(130_000)],
  ['anchors', '&a '.repeat(40_000)],
  ['one key over and over', 'a:\n'.repeat(40_000)],
  ['directives', '%a\n'.repeat(40_000)],
  [
    'ever more aliases',
    `a: &a [x]\n${Array.from({ length: 60 }, (_, n) => `b${n}: &b${n} [*a, *a, *a, *a]`).join('\n')}`,
  ],
  [
    '10 000 inputs',
    `machine: m\naxes: {}\ninputs: {${Array.from({ length: 10_000 }, (_, n) => `a${n}: {}`).join(', ')}}`,
  ],
  ['a megabyte', 'x'.repeat(1_000_000)],
];

describe('hostile text', () => {
  // Half a minute is far more than any takes; what must not be is minutes.
  it.each(hostile)(
    'of %s is refused in bounded time',
    (_, text) => {
      const { problems } = readMachineFile(text);
      expect(problems?.length).toBeGreaterThan(0);
      expect(problems?.length).toBeLessThanOrEqual(501);
      for (const { found } of problems ?? []) expect(found.length).toBeLessThan(400);
    },
    30_000,
  );

  it('of any kind gives a machine or problems with a place in the file, never a throw', () => {
    const pieces = fc.constantFrom(
      'machine: m\n',
      'axes: {X: }\n',
      'inputs:\n',
      '  a: ',
      '{ duty: [limit] }\n',
      '\t',
      '- ',
      ': ',
      '"',
      "'",
      '[',
      '}',
      '&a ',
      '*a',
      '<<: ',
      '!!x ',
      '---\n',
      '|\n',
      '# ',
      '\u2028',
      '\ud800',
      '\u0000',
      '__proto__: 1\n',
      '%',
      '\r',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces, { maxLength: 30 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, (any) => {
        const read = readMachineFile(any);
        const lines = any.split('\n').length;
        for (const { line, column } of read.problems ?? []) {
          expect(line >= 1 && line <= lines && column >= 1).toBe(true);
        }
        expect(read.machine === undefined).toBe(read.problems !== undefined);
      }),
      { numRuns: 1000 },
    );
  });

  it('made by damaging a good file gives a machine or problems, never a throw', () => {
    const good = starterFile().replaceAll('# ', '');
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(40), fc.string({ maxLength: 4 }), (from, length, put) => {
        const read = readMachineFile(good.slice(0, from) + put + good.slice(from + length));
        expect(read.machine === undefined).toBe(read.problems !== undefined);
      }),
      { numRuns: 300 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { axis, file, input, marked, places, told } from './told-wrong.ts';

const long = 'a'.repeat(25);
const switches = (entries: string) => file(`  a:\n    joined: series\n    switches:\n      ${entries}`);

describe('an entry in a wrong place is told where it stands and what may stand there', () => {
  told([
    ['volts', input('>>volts: 5'), 'inputs.a.volts', 'volts', 'voltage', 'write voltage: 5 V'],
    ['a pin', input('>>pin: 3'), 'inputs.a.pin', 'pin', 'terminal', 'write terminal'],
    ['a type', input('>>type: NC'), 'inputs.a.type', 'type', 'contact', 'write contact or sensor'],
    [
      'a pull-up outside its circuit',
      input('>>pull-up: 10 kohm'),
      'inputs.a.pull-up',
      'pull-up',
      'circuit',
      'its `circuit`',
    ],
    [
      'a key nobody knows',
      input('>>contct: unknown'),
      'inputs.a.contct',
      'contct',
      'contact',
      'write contact',
    ],
    [
      'a key with an underscore',
      axis('>>home_value: 0'),
      'axes.X.home_value',
      'home_value',
      'home value',
      'write home value',
    ],
    [
      'a key of a circuit nobody knows',
      input('circuit: { >>pullup: 5 kohm }'),
      'inputs.a.circuit.pullup',
      'pullup',
      'pull-up',
      'write pull-up',
    ],
    [
      'a key of the input at one of its switches',
      switches('b: { duty: [limit], >>terminal: I1 }'),
      'inputs.a.switches.b.terminal',
      'terminal',
      'contact',
      'the input itself',
    ],
    [
      'a key of a switch at the input it shares',
      file('  a:\n    joined: series\n    >>place: left\n    switches: { b: { duty: [limit] } }'),
      'inputs.a.place',
      'place',
      'polarity',
      'each of the `switches`',
    ],
    [
      'a key of an axis at the top',
      file('  a: { duty: [limit] }', '  X: {}', '>>travel: 300'),
      'travel',
      'travel',
      'machine',
      'one of the `axes`',
    ],
    ['no duty', file('  >>a: { axis: X }'), 'inputs.a.duty', 'nothing', 'home, limit', 'add'],
    ['a duty left empty', file('  >>a: { duty: }'), 'inputs.a.duty', 'nothing', 'home, limit', 'add'],
    [
      'a switch without a duty',
      switches('>>b: { axis: X }'),
      'inputs.a.switches.b.duty',
      'nothing',
      'home, limit',
      'add',
    ],
    [
      'switches without how they are joined',
      file('  a:\n    >>switches: { b: { duty: [limit] } }'),
      'inputs.a.joined',
      'nothing',
      'series, parallel',
      'add',
    ],
    [
      'joined without switches',
      file('  a: >>{ joined: series, duty: [limit] }'),
      'inputs.a.switches',
      'nothing',
      'switches',
      'add',
    ],
    ['an input that is only a word', file('  a: >>limit'), 'inputs.a', 'no entries', 'key: value', 'below'],
    ['no axes', '>>machine: m\n', 'axes', 'nothing', 'axes by letter', 'add'],
    ['axes with nothing in them', 'machine: m\n>>axes:\n', 'axes', 'nothing', 'axes by letter', 'below'],
    ['no name of the machine', '>>axes: {}\n', 'machine', 'nothing', 'text', 'add'],
    [
      'one setting for all inputs told in two ways',
      file(
        '  a: { duty: [limit], polarity: active when open }\n  b: { duty: [limit], polarity: >>active when closed }',
        '  X: {}',
        'polarity: one for all',
      ),
      'inputs.b.polarity',
      'active when closed',
      'active when open, as a says',
      'polarity: each',
    ],
  ]);
});

describe('a wrong name is told where it stands and what a name is', () => {
  told([
    [
      'capitals and an underscore',
      file('  >>X_Home: { duty: [limit] }'),
      'inputs.X_Home',
      'X_Home',
      'lower-case letters, digits and hyphens, 24 at most',
      'write x-home',
    ],
    [
      '25 characters',
      file(`  >>${long}: { duty: [limit] }`),
      `inputs.${long}`,
      long,
      '24 at most',
      `write ${long.slice(1)}`,
    ],
    [
      'the word kept for the status stream',
      file('  >>stream: { duty: [limit] }'),
      'inputs.stream',
      'stream',
      'kept for the status stream',
      'another name',
    ],
    [
      'a switch called like an input',
      file('  b: { duty: [limit] }\n  a:\n    joined: series\n    switches: { >>b: { duty: [limit] } }'),
      'inputs.a.switches.b',
      'also an input',
      'no input has',
      'rename',
    ],
    [
      'two inputs called alike',
      file('  a: { duty: [limit] }\n  >>a: { duty: [home] }'),
      'inputs.a',
      'a second time',
      'once',
      'rename',
    ],
    [
      'one entry twice',
      file('  a: { duty: [limit], >>duty: [home] }'),
      'inputs.a.duty',
      'a second time',
      'once',
      'take one',
    ],
    [
      'an axis in a small letter',
      file('  a: { duty: [limit] }', '  >>x: {}'),
      'axes.x',
      '"x"',
      'X, Y, Z',
      'write X',
    ],
    [
      'the key of every object',
      file('  >>__proto__: { duty: [limit] }'),
      'inputs.__proto__',
      '__proto__',
      'lower-case',
      'write proto',
    ],
  ]);
});

describe('a machine file with many faults', () => {
  it('is told them all at once, in the order of its lines', () => {
    const { text, at } = marked(
      file(
        '  a: { duty: [>>x], >>axs: X }\n  >>B: { contact: >>closed }',
        '  X: { travel: >>far, soft: [3, 1] }\n  >>k: {}',
        'units: >>ell',
      ),
    );
    const spots = places(text).map((place) => place.split(' ')[0]);
    expect([...new Set(spots)]).toEqual(at);
    expect(places(text).map((place) => place.split(' ')[1])).toEqual([
      'units',
      'inputs.a.duty[0]',
      'inputs.a.axs',
      'inputs.B',
      'inputs.B.duty',
      'inputs.B.contact',
      'axes.X.travel',
      'axes.k',
    ]);
  });

  it('may have 64 inputs and no more', () => {
    const of = (count: number) =>
      file(Array.from({ length: count }, (_, index) => `  i${index}: { duty: [limit] }`).join('\n'));
    expect(places(of(64))).toEqual([]);
    expect(places(of(65))).toEqual(['68:3 inputs.i64']);
  });
});

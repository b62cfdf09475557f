import { describe, expect, it } from 'vitest';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import { dropCautions } from '../../src/words/cautions.ts';

const inputs = 'inputs: { x-home: { duty: [home], axis: X, end: negative } }';

function cautionsOf(axes: string): readonly string[] {
  const read = readMachineFile(`machine: One\n${inputs}\naxes: ${axes}\n`);
  if (!('machine' in read)) throw new Error(JSON.stringify(read.problems));
  return dropCautions(read.machine);
}

// Common practice, no source: what hangs on a screw or belt comes down when its motor lets go.
describe('the caution about an axis that drops', () => {
  it.each([
    ['Z, whatever is said of it', '{ X: { positive: right }, Z: {} }', ['Z']],
    ['an axis that points up', '{ X: { positive: right }, Y: { positive: top } }', ['Y']],
    [
      'two that hang',
      '{ X: { positive: right }, Z: { positive: top }, W: { positive: bottom } }',
      ['Z', 'W'],
    ],
  ])('names %s', (_what, axes, named) => {
    const [told = ''] = cautionsOf(axes);
    for (const each of named) expect(told).toMatch(new RegExp(`\\b${each}\\b.*can drop`));
  });

  it('is shown without a name where the file leaves open which way an axis points', () => {
    expect(cautionsOf('{ X: { positive: right }, Y: {} }')[0]).toMatch(/^A vertical axis can drop/);
    expect(cautionsOf('{ X: {} }')[0]).toMatch(/^A vertical axis can drop/);
  });

  it('is left out where the file shows every axis lying down', () => {
    expect(cautionsOf('{ X: { positive: right }, Y: { positive: back } }')).toEqual([]);
    expect(cautionsOf('{ X: { positive: right }, Z: { positive: back }, C: { kind: rotary } }')).toEqual([]);
  });

  it('is shown where an input names an axis that the file does not describe', () => {
    expect(cautionsOf('{ Y: { positive: back } }')[0]).toMatch(/can drop/);
  });
});

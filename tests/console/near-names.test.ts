import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tellwire } from './run.ts';

const file = join(mkdtempSync(join(tmpdir(), 'tellwire-near-')), 'mill.yaml');
writeFileSync(file, 'machine: Mill\naxes: { X: { travel: 300 } }\ninputs: { x-home: { duty: [home] } }\n');
const bench = ['commission', '--operator', 'lines', '--port', 'bench'];

describe('a name that nothing has', () => {
  it.each<[readonly string[], string]>([
    [[...bench, '--fault', 'brokenwire:x-home'], 'broken-wire'],
    [[...bench, '--fault', 'broken:x-home'], 'broken-wire'],
    [[...bench, '--fault', 'broken-wire:x-hom'], 'x-home'],
    [[...bench, '--checks', 'openwire'], 'open-wire'],
    [[...bench, '--only', 'zhome'], 'z-home'],
    [[...bench, '--only', 'doors/hatsch'], 'doors/hatch'],
    [[...bench, '--speak', 'json-nestd'], 'json-nested'],
    [['troubleshoot', 'zhome', '--operator', 'lines', '--port', 'bench'], 'z-home'],
    [['wiring', 'normaly-closed-to-ground'], 'normally-closed-to-ground'],
    [['wiring', 'xhome', '--machine', file], 'x-home'],
    [['explain', 'open wires'], 'open-wire'],
  ])('brings up the one that was meant: %j', async (words, meant) => {
    const { code, out, err } = await tellwire(...words);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    const [, first] = /Did you mean ([^ ?]+?),?(?: or|\?| )/.exec(err) ?? [];
    expect(first).toBe(meant);
  });

  it.each<[readonly string[], RegExp]>([
    [[...bench, '--fault', 'gremlin:x-home'], /Try: `tellwire bench --faults` lists them all\.\n$/],
    [['wiring', 'spaghetti'], /Try: `tellwire wiring` lists them all\./],
    [[...bench, '--only', 'spindle'], /Try: The machine file names x-home/],
  ])('is followed by where all of them stand where none is near: %j', async (words, said) =>
    expect((await tellwire(...words)).err).toMatch(said),
  );
});

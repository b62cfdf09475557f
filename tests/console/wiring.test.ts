import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wiringNames } from '../../src/model/wiring-names.ts';
import { tellwire } from './run.ts';

const file = join(mkdtempSync(join(tmpdir(), 'tellwire-wiring-')), 'table.yaml');
writeFileSync(
  file,
  `machine: Router table
axes: { X: { travel: 400 } }
inputs:
  x-home: { duty: [home], contact: normally closed, circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm } }
  probe: { duty: [probe] }
`,
);

describe('tellwire wiring', () => {
  it('without a name lists what can be computed', async () => {
    const { code, out } = await tellwire('wiring');
    expect(code).toBe(0);
    expect(out).toContain('normally-closed-to-ground');
    const names = out.match(/^[a-z-]+(?= )/gm);
    expect(names).toEqual(wiringNames);
    for (const line of out.split('\n')) expect(line.length).toBeLessThan(80);
  });

  it('computes a wiring named on the command line with the values given', async () => {
    const { code, out } = await tellwire(
      'wiring',
      'normally-closed-to-ground',
      '--pull-up',
      '2.2kohm',
      '--json',
    );
    const { wiring, margins } = JSON.parse(out);
    expect(code).toBe(0);
    expect(wiring.values.find(({ name }: { name: string }) => name === 'pull-up')).toMatchObject({
      nominal: 2200,
      given: true,
    });
    // 2.2 kohm * 1.5 / 3.5, less what the pin, the cable and its own leakage take.
    expect(margins.highestContactOhms).toBeCloseTo(940, -1);
  });

  it('takes an input of a machine file as the file declares it', async () => {
    const { code, out } = await tellwire('wiring', 'x-home', '--machine', file, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out).wiring).toMatchObject({
      name: 'normally-closed-to-ground',
      input: 'x-home',
      contactAssumed: false,
    });
  });

  it('takes a cable by its core and its length: 10 m of 0.5 mm2 are 0.78 ohm there and back (IEC 60228)', async () => {
    const { out } = await tellwire('wiring', 'touch-plate', '--core', '0.5mm2', '--length', '10m', '--json');
    const cable = JSON.parse(out).wiring.values.find(({ name }: { name: string }) => name === 'cable');
    expect(cable.nominal).toBeCloseTo(0.78, 9);
  });

  it('lays candidates side by side, each with its own values', async () => {
    const { code, out } = await tellwire(
      'wiring',
      '--compare',
      'normally-open-to-ground',
      'normally-closed-to-ground:pull-up=1kohm',
      'contact-into-fed-optocoupler:contact=normally closed,supply=12V,series=1kohm',
      '--json',
    );
    expect(code).toBe(0);
    const { candidates } = JSON.parse(out);
    expect(candidates).toHaveLength(3);
    expect(candidates.at(-1).wiring.contact).toBe('normally open');
  });

  it.each<[readonly string[], RegExp]>([
    [['no-such'], /There is no wiring no-such/],
    [['touch-plate', 'touch-probe'], /Several wirings.*\n {2}Try: Add --compare/],
    [['touch-plate', '--pull-up', 'much'], /pull-up much is not understood/],
    [['touch-plate', '--bleed', '1kohm'], /has no bleed/],
    [['touch-plate:weight=3'], /there is no value weight/],
    [['touch-plate', '--input', 'IEC 61131-2 type 3'], /is not read by an input of the kind/],
    [['touch-plate', '--input', 'valve'], /no kind of input valve/],
    [['touch-plate', '--contact', 'sideways'], /contact sideways is not known/],
    [['touch-plate', '--core', '7mm2', '--length', '3m'], /cable 7mm2, 3m is not understood/],
    [['touch-plate', '--format', 'pdf'], /format pdf is not known/],
    [['door', '--machine', file], /no input door/],
    [['probe', '--machine', file], /does not say what circuit probe has/],
  ])('%j is refused with what is allowed', async (words, said) => {
    const { code, out, err } = await tellwire('wiring', ...words);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toMatch(said);
  });
});

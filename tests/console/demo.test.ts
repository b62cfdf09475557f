import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { runDemo } from '../../src/console/run-demo.ts';
import { kept, tellwire } from './run.ts';

vi.setConfig({ testTimeout: 60_000 });

const fresh = (): string => join(mkdtempSync(join(tmpdir(), 'tellwire-demo-')), 'session');
const demo = (out: string, faults?: readonly string[]) =>
  kept(() => runDemo({ handsOn: false, out, faults, color: false }));

describe('the first run', () => {
  const out = fresh();

  it('finds what is planted in the bench and nothing else, leaves with 0 and says where the report is', async () => {
    const ran = await demo(out);
    expect(ran.code).toBe(0);
    for (const planted of ['normally-open:x-far', 'crossed:y-home,z-home', 'broken-wire:y-far'])
      expect(ran.out).toContain(planted);
    expect(ran.out).toContain('40 of 40 verdicts are as planted');
    expect(ran.out).toContain(`Report: ${join(out, 'report.html')}`);
    expect(existsSync(join(out, 'report.html'))).toBe(true);
  });

  it.each<[string, readonly string[]]>([
    ['one is left out', ['normally-open:x-far', 'crossed:y-home,z-home']],
    ['one is on another input', ['normally-open:x-home', 'crossed:y-home,z-home', 'broken-wire:y-far']],
    ['one is another', ['normally-open:x-far', 'crossed:y-home,z-home', 'dead-input:y-far']],
    [
      'one is added',
      ['normally-open:x-far', 'crossed:y-home,z-home', 'broken-wire:y-far', 'normally-open:probe'],
    ],
  ])('does not leave with 0 where of the planted faults %s', async (_name, faults) => {
    const ran = await demo(fresh(), faults);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('UNLIKE');
  });

  it('can be judged, mapped and rendered again from its folder', async () => {
    const report = readFileSync(join(out, 'report.json'), 'utf8');
    const replayed = await tellwire('replay', out, '--json');
    expect(replayed.code).toBe(1);
    expect(replayed.out === report).toBe(true);
    expect((await tellwire('replay', out)).out).toContain('Kittiwake plywood router');
    const map = await tellwire('map', out);
    expect(map.out).toMatch(/y-home[\s\S]*answers on z-home/);
    expect(JSON.parse((await tellwire('map', out, '--json')).out)).toHaveLength(9);
    const rendered = await tellwire('report', out, '--format', 'md,json');
    expect(rendered).toEqual({
      code: 0,
      err: '',
      out: `${join(out, 'report.md')}\n${join(out, 'report.json')}\n`,
    });
    expect(readFileSync(join(out, 'report.json'), 'utf8') === report).toBe(true);
  });

  it('writes over no session', async () => {
    await expect(demo(out)).rejects.toThrow('not empty');
  });
});

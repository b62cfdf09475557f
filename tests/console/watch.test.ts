import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { describe, expect, it } from 'vitest';
import { blockGlyphs } from '../../src/console/painting/glyphs.ts';
import { LiveInputs } from '../../src/console/painting/live-inputs.ts';
import { textOf } from '../../src/console/painting/row.ts';
import { watchRows } from '../../src/console/painting/watch-rows.ts';
import { ms } from '../../src/model/units.ts';
import { describeBuilt, program } from './built.ts';
import { tellwire } from './run.ts';

describe('tellwire watch', () => {
  it('wants a port', async () => expect((await tellwire('watch')).err).toMatch(/No port was named/));

  it('paints the inputs, what was marked and the keys, in any window', () => {
    const inputs = new LiveInputs();
    const status = { segment: 1, lost: 0, axes: [], activity: 'still', positions: [] } as const;
    inputs.take({
      ...status,
      kind: 'status',
      arrived: ms(1000),
      at: ms(1000),
      inputs: ['x-home', 'door'],
      levels: ['H', 'L'],
      active: ['1', '0'],
    });
    const facts = {
      inputs: [],
      axes: [],
      lines: 3,
      reports: 2,
      median: ms(7),
      longest: ms(9),
      lost: 0,
      gaps: 0,
      restarts: 0,
      unreadable: {},
    };
    const state = {
      port: 'bench',
      inputs,
      facts,
      said: ['Mark 1 at 0.50 s'],
      places: ['X 1.000'],
      soak: undefined,
      hasRequest: false,
    };
    for (const [width, height] of [
      [80, 24],
      [40, 8],
      [20, 5],
    ] as const) {
      const rows = watchRows(state, { width, height, glyphs: blockGlyphs, now: 0 }).map(textOf);
      expect(rows.length).toBeLessThanOrEqual(height);
      expect(rows.every((row) => row.length <= width)).toBe(true);
      expect(rows.at(-1)).toContain('m marks');
    }
    const text = watchRows(state, { width: 80, height: 24, glyphs: blockGlyphs, now: 0 })
      .map(textOf)
      .join('\n');
    for (const part of [
      /x-home +■ ACTIVE/,
      /door +□ inactive/,
      /Mark 1 at 0\.50 s/,
      /2 reports, one every 7 ms/,
      /X 1\.000/,
    ])
      expect(text).toMatch(part);
  });
});

describeBuilt('tellwire watch', [], () => {
  const watched = async (...words: readonly string[]) => {
    const watch = spawn(process.execPath, [
      program,
      'watch',
      '--port',
      'bench',
      '--operator',
      'json',
      ...words,
    ]);
    const said: Record<string, unknown>[] = [];
    const lines = createInterface({ input: watch.stdout });
    lines.on('line', (text) => said.push(JSON.parse(text) as Record<string, unknown>));
    const timer = setTimeout(() => watch.stdin.write('I tapped the plug\n'), 1500);
    const [code] = await once(watch, 'close');
    clearTimeout(timer);
    return { code: code as number, said, of: (kind: string) => said.filter((each) => each['kind'] === kind) };
  };

  it('tells changes and marks as they come, and an input that flickers fails its soak', async () => {
    const { code, of } = await watched('--soak', '5s', '--fault', 'flickers:x-home');
    expect(of('mark')).toEqual([expect.objectContaining({ number: 1, said: 'I tapped the plug' })]);
    expect(of('heard').length).toBeGreaterThan(0);
    expect(of('heard').every(({ input }) => input === 'x-home')).toBe(true);
    const verdict = of('verdict').find(({ subject }) => subject === 'x-home');
    expect(verdict).toMatchObject({ check: 'soak', status: 'failed', findings: [{ kind: 'false-trips' }] });
    expect(of('finished')).toHaveLength(1);
    expect(code).toBe(1);
  }, 60_000);

  it('proves nothing in a few seconds of a quiet machine', async () => {
    const { code, of } = await watched('--soak', '3s');
    expect(of('verdict').length).toBeGreaterThan(5);
    expect(of('verdict').every(({ status }) => status === 'inconclusive')).toBe(true);
    expect(code).toBe(2);
  }, 60_000);
});

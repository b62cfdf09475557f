import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { tellwire } from '../console/run.ts';
import { Running } from '../integration/processes.ts';

vi.setConfig({ testTimeout: 60_000 });
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tellwire-learn-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('tellwire learn', () => {
  it('wants a port and, but for the bench, the machine file', async () => {
    expect((await tellwire('learn')).err).toMatch(/port/);
    const { code, err } = await tellwire(
      'learn',
      '--port',
      'tcp://127.0.0.1:9',
      '--out',
      join(folder, 'new'),
    );
    expect(code).toBe(3);
    expect(err).toMatch(/machine/);
  });

  it('overwrites nothing', async () => {
    writeFileSync(join(folder, 'mine.txt'), 'mine');
    const { code, err } = await tellwire('learn', '--port', 'bench', '--out', folder);
    expect(code).toBe(3);
    expect(err).toMatch(/not empty/);
  });

  it('writes no request of more than 32 bytes, and none that nobody let pass', async () => {
    const long = await tellwire(
      'learn',
      '--port',
      'bench',
      '--out',
      join(folder, 'new'),
      '--request',
      'k'.repeat(33),
    );
    expect(long).toMatchObject({ code: 3, err: expect.stringMatching(/1 to 32 bytes/) });
    const words = ['learn', '--port', 'bench', '--operator', 'json', '--out', join(folder, 'new')];
    const unknown = await tellwire(...words, '--request', 'zz\\n');
    expect(unknown).toMatchObject({ code: 3, err: expect.stringMatching(/--allow-request [0-9a-f]{16}/) });
  });

  it('speaks the operator’s JSON; stopped, it binds nothing and says so in the file', {
    timeout: 60_000,
  }, async () => {
    const out = join(folder, 'new');
    const running = new Running([
      'learn',
      '--port',
      'bench',
      '--speak',
      'json-nested',
      '--operator',
      'json',
      '--out',
      out,
    ]);
    const ask = await running.first('ask');
    expect(ask).toMatchObject({ check: 'learn', action: 'power', what: 'motors', to: 'off' });
    running.say({ id: ask.id, answer: 'stop' });
    expect(await running.first('finished')).toMatchObject({ exit: 2, report: join(out, 'stream.yaml') });
    expect((await running.closed).code).toBe(2);
    const text = readFileSync(join(out, 'stream.yaml'), 'utf8');
    expect(text).toContain('STOPPED before the end: nothing is bound.');
    expect(text).toContain('inputs: {}');
    expect(readFileSync(join(out, 'capture.log'), 'utf8')).toMatch(/ opening bench\n/);
  });
});

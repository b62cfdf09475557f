import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { whenAsked } from '../session/when-asked.ts';
import { tellwire } from './run.ts';

const work = mkdtempSync(join(tmpdir(), 'tellwire-pass-'));
const file = join(work, 'stream.yaml');
const asked: string[] = [];
let opened = 0;
const server = createServer((socket) => {
  opened++;
  socket.on('error', () => {});
  socket.on('data', (bytes) => {
    asked.push(bytes.toString('latin1'));
    socket.write('doing=rests pins=01\r\n');
  });
});
let port = '';

beforeAll(async () => {
  vi.stubEnv('XDG_STATE_HOME', work);
  writeFileSync(file, whenAsked());
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  port = `tcp://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => {
  vi.unstubAllEnvs();
  server.close();
  rmSync(work, { recursive: true, force: true });
});

const hashIn = (said: string) => /--allow-request ([0-9a-f]{16})/.exec(said)?.[1] ?? '';

describe('where nobody is there to ask', () => {
  it.each([
    ['watch', '--operator', 'lines'],
    ['watch', '--operator', 'json', '--allow-request', '0123456789abcdef'],
    ['commission', '--operator', 'json', '--machine', 'bench.yaml', '--out', join(work, 'none')],
    ['learn', '--operator', 'json', '--request', 'tell\\n', '--every', '100ms', '--out', join(work, 'none')],
  ])('%s opens no port for bytes that were not let pass, and shows them', async (...words) => {
    writeFileSync(join(work, 'bench.yaml'), (await tellwire('bench', '--print-machine')).out);
    const placed = words.map((word) => (word === 'bench.yaml' ? join(work, word) : word));
    const more = words[0] === 'learn' ? ['--machine', join(work, 'bench.yaml')] : ['--stream', file];
    const { code, out, err } = await tellwire(...placed, '--port', port, ...more);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toContain('tell\\x0a');
    expect(err).toContain('every 100 ms while the machine stands still');
    expect(hashIn(err)).not.toBe('');
    expect([opened, asked]).toEqual([0, []]);
  });

  it('the hash of these very bytes and their pace lets them pass, and no other does', async () => {
    const hash = hashIn((await tellwire('watch', '--port', port, '--stream', file)).err);
    writeFileSync(file, whenAsked(150));
    const slower = await tellwire('watch', '--port', port, '--stream', file, '--allow-request', hash);
    expect(slower.code).toBe(3);
    expect(hashIn(slower.err)).not.toBe(hash);
    expect(opened).toBe(0);
    writeFileSync(file, whenAsked());
    const soaked = ['watch', '--port', port, '--stream', file, '--operator', 'json', '--soak', '1s'];
    const { code, out } = await tellwire(...soaked, '--allow-request', hash);
    expect(code).toBe(2);
    expect(asked.join('')).toMatch(/^(tell\n){5,12}$/);
    const last = JSON.parse(out.trimEnd().split('\n').at(-1) ?? '') as Record<string, unknown>;
    expect(last).toMatchObject({ kind: 'finished', stream: { reports: asked.length } });
    expect(last['written']).toBe(`Written to the port: tell\\x0a ${asked.length} times.`);
  });
});

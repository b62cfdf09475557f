import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { connect, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it } from 'vitest';
import { describeBuilt, program } from './built.ts';
import { tellwire } from './run.ts';

it('commands a machine from other computers only where that is said in so many words', async () => {
  for (const words of [
    ['--serve', 'tcp://0.0.0.0:0'],
    ['--beside', 'tcp://192.168.1.2:4000'],
  ]) {
    const { code, err } = await tellwire('inline', '--port', 'tcp://127.0.0.1:9', ...words);
    expect(code).toBe(3);
    expect(err).toMatch(/whoever reaches it commands the machine[\s\S]*--network/);
  }
});

it('wants the port of a controller', async () => {
  expect((await tellwire('inline')).err).toMatch(/No port of a controller/);
});

describeBuilt('tellwire inline', [], () => {
  it('passes lines both ways, lets others listen, keeps the capture and says what passed', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'tellwire-inline-test-'));
    const controller = createServer().listen(0, '127.0.0.1');
    await once(controller, 'listening');
    const address = controller.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const joined = once(controller, 'connection') as Promise<[Socket]>;
    const out = join(folder, 'kept.log');
    const line = spawn(process.execPath, [
      program,
      'inline',
      '--port',
      `tcp://127.0.0.1:${port}`,
      '--out',
      out,
      '--json',
    ]);
    const [machine] = await joined;
    const said: { kind: string; program?: string; beside?: string }[] = [];
    const lines = createInterface({ input: line.stdout });
    lines.on('line', (text) => said.push(JSON.parse(text)));
    await once(lines, 'line');
    const at = (text = '') => connect({ host: '127.0.0.1', port: Number(text.split(':').at(-1)) });
    const [own, beside] = [at(said[0]?.program), at(said[0]?.beside)];
    await Promise.all([once(own, 'connect'), once(beside, 'connect')]);
    beside.write('nobody hears this');
    own.write('up\n');
    expect(String((await once(machine, 'data'))[0])).toBe('up\n');
    const heard = Promise.all([once(own, 'data'), once(beside, 'data')]);
    machine.write('down\r\n');
    expect((await heard).map(([bytes]) => String(bytes))).toEqual(['down\r\n', 'down\r\n']);
    line.kill('SIGTERM');
    const [code] = await once(line, 'close');
    expect(code).toBe(0);
    expect(said.at(-1)).toEqual({ kind: 'finished', fromController: 6, fromProgram: 3, notSent: 0 });
    expect(readFileSync(out, 'latin1').replace(/^\S+ /gm, '').split('\n')).toEqual([
      expect.stringMatching(/^opening tcp/),
      'tx up\\x0a',
      'rx down',
      '',
    ]);
    controller.close();
    rmSync(folder, { recursive: true });
  }, 60_000);
});

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { whenAsked } from '../session/when-asked.ts';
import { describeBuilt, program } from './built.ts';
import { hasTmux, Terminal } from './terminal.ts';

const open: Terminal[] = [];
const servers: Server[] = [];
afterEach(() => {
  for (const terminal of open.splice(0)) terminal.hangUp();
  for (const server of servers.splice(0)) server.close();
});

function terminal(name: string, words: string, env: Readonly<Record<string, string>> = {}): Terminal {
  const made = new Terminal(`watch-${name}`, `${process.execPath} ${program} watch ${words}`, env);
  open.push(made);
  return made;
}

/** A controller that speaks when it is asked; what it was asked, and what it does, are the test's. */
async function controller() {
  const state = { asked: [] as string[], doing: 'rests', pins: '00', port: '' };
  const server = createServer((socket) => {
    socket.on('error', () => {});
    socket.on('data', (bytes) => {
      state.asked.push(bytes.toString('latin1'));
      socket.write(`doing=${state.doing} pins=${state.pins}\r\n`);
    });
  });
  servers.push(server);
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  state.port = `tcp://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return state;
}

vi.setConfig({ testTimeout: 90_000 });
const patience = 40_000;

describeBuilt('the watch on the whole screen', [['tmux', hasTmux]], () => {
  it('shows every input with shape, word and level, marks a moment by a key, follows a resize, and says at its end what it saw', async () => {
    const screen = terminal('whole', '--port bench');
    const page = await screen.shows(/x-home +□ inactive/, patience);
    expect(page).toContain('cannot stop the machine');
    expect(page).toContain('m marks this moment, q ends.');
    expect(page).not.toContain('says that nothing moves');
    expect(page).toMatch(/commanded: X -?\d+\.\d{3}/);
    expect(page.split('\n').every((row) => row.length <= 80)).toBe(true);
    screen.type('m');
    await screen.shows(/Mark 1 at \d+\.\d\d s/);
    screen.resize(40, 12);
    await screen.shows(/x-home/);
    expect(
      screen
        .look()
        .split('\n')
        .every((row) => row.length <= 40),
    ).toBe(true);
    screen.resize(80, 24);
    screen.type('q');
    const end = await screen.shows('left with 0');
    expect(end).toMatch(/Mark 1 at/);
    expect(end).toMatch(/\d+ reports, one every/);
  });

  it('counts false trips with nobody near, and leaves with a verdict an input', async () => {
    const screen = terminal('soak', '--port bench --soak 6s --fault flickers:x-home');
    await screen.shows('Hands off and nobody near', patience);
    screen.resize(160, 60);
    const end = await screen.shows('left with 1', patience);
    expect(end).toMatch(/Failed +x-home: /);
    expect(end).toMatch(/Inconclusive +probe: /);
  });

  it('says everything without colour and without block signs', async () => {
    const screen = terminal('plain', '--port bench', { NO_COLOR: '1', LC_ALL: 'C' });
    const page = await screen.shows(/x-home/, patience);
    expect(page).not.toMatch(/[^\n\x20-\x7e]/);
    expect(screen.lookClosely()).not.toMatch(/\u001b\[(?:\d+;)*(?:3[0-7]|4[0-7]|9[0-7])(?:;\d+)*m/);
  });

  it('shows the bytes of a description before any is written, asks once for these bytes, and not again', async () => {
    const place = mkdtempSync(join(tmpdir(), 'tellwire-watch-'));
    const file = join(place, 'stream.yaml');
    writeFileSync(file, whenAsked());
    const env = { XDG_STATE_HOME: place };
    const machine = await controller();
    const words = `--port ${machine.port} --stream ${file}`;
    const first = terminal('no', words, env);
    const question = await first.shows('Write yes in full', patience);
    expect(question).toContain('tell\\x0a');
    first.type('y');
    first.type('Enter');
    await first.shows('left with 3');
    expect(machine.asked).toEqual([]);

    const second = terminal('yes', words, env);
    await second.shows('Write yes in full', patience);
    for (const key of ['y', 'e', 's', 'Enter']) second.type(key);
    await second.shows(/stop +□ inactive/, patience);
    expect(second.look()).toContain('s says that nothing moves');
    machine.pins = '10';
    await second.shows(/x-home +■ ACTIVE/);
    machine.doing = 'runs';
    await new Promise((passed) => setTimeout(passed, 1500));
    const paused = machine.asked.length;
    machine.doing = 'rests';
    await new Promise((passed) => setTimeout(passed, 1500));
    // It may stand again: nobody but the person can know.
    expect(machine.asked.length).toBe(paused);
    second.type('s');
    await second.shows('the request is written again');
    machine.pins = '01';
    await second.shows(/stop +■ ACTIVE/);
    second.type('q');
    const end = await second.shows('left with 0');
    expect(end).toMatch(/Written to the port: tell\\x0a \d+ times/);
    expect(machine.asked.join('')).toMatch(/^(tell\n)+$/);

    const third = terminal('again', words, env);
    await third.shows(/stop +■ ACTIVE/, patience);
    third.type('q');
    await third.shows('left with 0');
    expect(readFileSync(join(place, 'tellwire', 'let-pass'), 'utf8')).toMatch(
      /^[0-9a-f]{16} tell\\x0a every 100 ms\n$/,
    );

    writeFileSync(file, whenAsked(150));
    const other = terminal('other', words, env);
    await other.shows('Write yes in full', patience);
    other.type('C-c');
    await other.shows(/left with \d/);
  });
});

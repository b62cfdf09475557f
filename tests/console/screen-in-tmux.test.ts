import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, expect, it, vi } from 'vitest';
import { describeBuilt, program } from './built.ts';
import { hasTmux, Terminal } from './terminal.ts';

const open: Terminal[] = [];
afterEach(() => {
  for (const terminal of open.splice(0)) terminal.hangUp();
});

function terminal(name: string, command: string, env: Readonly<Record<string, string>> = {}): Terminal {
  const made = new Terminal(name, command, env);
  open.push(made);
  return made;
}

const folder = (): string => join(mkdtempSync(join(tmpdir(), 'tellwire-screen-')), 'session');
const commission = (out: string, more = ''): string =>
  `${process.execPath} ${program} commission --port bench --only probe --checks press --presses 2 --out ${out} ${more}`;

/** The journal’s lines of one kind. */
const journal = (out: string, kind: string): readonly Record<string, unknown>[] =>
  readFileSync(join(out, 'journal.ndjson'), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>)
    .filter((line) => line['kind'] === kind);

const pressIds = (out: string): readonly unknown[] =>
  journal(out, 'ask')
    .filter((line) => (line['ask'] as { readonly action: string }).action === 'press')
    .map((line) => line['id']);

async function untilWritten(path: string): Promise<void> {
  const until = performance.now() + 15_000;
  while (!existsSync(path) || readFileSync(path, 'utf8') === '') {
    if (performance.now() > until) throw new Error('the program never ended');
    await pause(50);
  }
}

/** Real time on a machine that may be busy with other tests. */
const patience = 90_000;
vi.setConfig({ testTimeout: patience });

describeBuilt('the screen in a terminal', [['tmux', hasTmux]], () => {
  it('leads through a check at 80 by 24 with one key a step, follows a resize, and leaves the terminal in order', async () => {
    const out = folder();
    const screen = terminal('whole', commission(out));
    expect(await screen.shows('Switch motor and spindle power off.')).toContain('▲ Caution:');
    screen.type('d');
    await screen.shows('Prop Z with a block');
    screen.type('y');
    const asked = await screen.shows(/▶ probe +□ inactive/);
    expect(asked).toContain('This is press 1 of 2.');
    expect(asked.split('\n').every((row) => row.length <= 80)).toBe(true);
    screen.resize(120, 40);
    await screen.shows(/^ ██+/m);
    screen.resize(40, 12);
    await screen.shows('Touch □□');
    screen.resize(80, 24);
    await screen.shows('This is press 1 of 2.');
    screen.type('6');
    await screen.shows('This is press 2 of 2.');
    expect(screen.look()).toMatch(/◆ (Seen|Heard): probe/);
    screen.type('6');
    const end = await screen.shows('left with 0');
    expect(end).toContain('Report: ');
    const presses = new Set(pressIds(out));
    expect(presses.size).toBe(2);
    for (const { id, by } of journal(out, 'ended')) if (presses.has(id)) expect(by).toBe('seen');
  });

  it('says which input answered in place of the one asked for, and takes back a choice of the hands with Escape', async () => {
    const screen = terminal('wrong', commission(folder()));
    await screen.shows('Switch motor and spindle power off.');
    screen.type('d');
    await screen.shows('Prop Z with a block');
    screen.type('y');
    await screen.shows('This is press 1 of 2.');
    screen.type('h');
    await screen.shows('which one to hold');
    screen.type('Escape');
    await screen.shows(/Your hands: +h hold/);
    screen.type('1');
    await screen.shows('◇ Seen: x-home answered, not probe.');
    screen.type('?');
    const explained = await screen.shows('not possible here');
    expect(explained).not.toMatch(/^ \d,/m);
  });

  it('loses nothing but the ask in flight when the line goes dead, and goes on with --resume', async () => {
    const out = folder();
    // The shell outlives the terminal and keeps what the program left with.
    const code = join(out, '..', 'code');
    const first = terminal('dies', `trap '' HUP; ${commission(out)}; echo $? > ${code}; exit`);
    await first.shows('Switch motor and spindle power off.');
    first.type('d');
    await first.shows('Prop Z with a block');
    first.type('y');
    await first.shows('This is press 1 of 2.');
    first.type('6');
    await first.shows('This is press 2 of 2.');
    first.hangUp();
    await untilWritten(code);
    expect(readFileSync(code, 'utf8')).toBe('2\n');
    const [done, inFlight] = pressIds(out);
    expect(journal(out, 'ended').find((line) => line['id'] === done)?.['by']).toBe('seen');
    const again = terminal('again', commission(out, '--resume'));
    // Nobody knows what was done meanwhile: what makes hands safe is asked first.
    await again.shows('Switch motor and spindle power off.');
    again.type('d');
    await again.shows('Prop Z with a block');
    again.type('y');
    await again.shows('This is press 2 of 2.');
    expect(journal(out, 'ask').at(-1)?.['again']).toBe(inFlight);
    again.type('6');
    await again.shows('left with 0');
  });

  it('stops on Ctrl-C and on q, resumable, with 2', async () => {
    for (const key of ['C-c', 'q']) {
      const out = folder();
      const screen = terminal(`stop-${key}`, commission(out));
      await screen.shows('Switch motor and spindle power off.');
      screen.type(key);
      await screen.shows('left with 2');
    }
  });

  it('says everything without colour and without block signs', async () => {
    const screen = terminal('plain', commission(folder()), { NO_COLOR: '1', LC_ALL: 'C' });
    const page = await screen.shows('Switch motor and spindle power off.');
    expect(page).toMatch(/! Caution:/);
    expect(page).not.toMatch(/[^\n\x20-\x7e]/);
    expect(screen.lookClosely()).not.toMatch(/\u001b\[(?:\d+;)*(?:3[0-7]|4[0-7]|9[0-7])(?:;\d+)*m/);
  });
});

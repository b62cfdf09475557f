import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, expect, it, vi } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { answerKeys } from '../../src/console/faces/answer-keys.ts';
import { workByJournal } from '../integration/by-journal.ts';
import { Person, type PersonOptions } from '../integration/person.ts';
import { served } from '../integration/processes.ts';
import { describeBuilt, program } from './built.ts';
import { hasTmux, Terminal } from './terminal.ts';

const cleanUp: (() => void)[] = [];
afterEach(() => {
  for (const each of cleanUp.splice(0).reverse()) each();
});
/** Real time on a machine that may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

/** A session on the screen about X, which was brought near its switch; a person works by its journal until `over`. */
async function onScreen(name: string, faults: readonly string[], options: PersonOptions, more = '') {
  const { bench, port } = await served('tcp://127.0.0.1:0', faults);
  cleanUp.push(() => bench.child.kill());
  bench.say({ do: 'move', axis: 'X', distance: -150 });
  await pause(3000);
  const place = mkdtempSync(join(tmpdir(), 'tellwire-motion-'));
  cleanUp.push(() => rmSync(place, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 }));
  const [machine, out] = [join(place, 'machine.yaml'), join(place, 'session')];
  writeFileSync(machine, scenarioFile);
  const asked = '--only x-home,stop --checks press,stop,seek --presses 1 --rest 1s';
  const screen = new Terminal(
    name,
    `${process.execPath} ${program} commission --port ${port} --machine ${machine} --operator screen --out ${out} ${asked} ${more}`,
  );
  cleanUp.push(() => screen.hangUp());
  let over = false;
  const person = new Person((hand) => bench.say(hand), options);
  const working = workByJournal(
    out,
    person,
    ({ answer }) => screen.type(answerKeys[answer as keyof typeof answerKeys]),
    () => over || existsSync(join(out, 'report.json')),
  );
  const leave = async () => {
    over = true;
    await working;
  };
  return { screen, out, place, working, leave };
}

/** Bells that a program rang: a BEL that ends a title is none (ECMA-48, operating system command). */
const bellsIn = (path: string): number =>
  [...readFileSync(path, 'latin1').replace(/\u001b\][^\u0007]*\u0007/g, '')].filter(
    (byte) => byte === '\u0007',
  ).length;

describeBuilt('motion on the screen', [['tmux', hasTmux]], () => {
  it('gives the whole window to a warning and rings, at 80 by 24 and at 120 by 40, until the motion is over', async () => {
    const bytes = join(mkdtempSync(join(tmpdir(), 'tellwire-bell-')), 'bytes');
    cleanUp.push(() => rmSync(join(bytes, '..'), { recursive: true, force: true }));
    let record = () => {};
    const { screen, out, working } = await onScreen('danger', ['home-end-wrong:X'], {
      hitsAfter: 5000,
      leaves: (ask) => {
        if (ask.action === 'seek') record();
        return false;
      },
    });
    record = () => screen.record(bytes);
    const warned = await screen.shows('X runs away from its home switch.', 60_000);
    const rows = warned.trimEnd().split('\n');
    expect(rows).toHaveLength(24);
    // A full bar above and below, and nothing of the usual page between them.
    for (const bar of [rows[0], rows[1], rows[22], rows[23]]) expect(bar).toMatch(/^█{80}$/);
    expect(warned).toContain('Stop it now, at the real stop.');
    expect(warned).not.toMatch(/tellwire listens only|judged|what they mean|x-home/);
    expect(rows.filter((row) => /[█▀▄▌▐]{2}/.test(row)).length).toBeGreaterThan(5);
    expect(bellsIn(bytes)).toBeGreaterThan(0);
    screen.resize(120, 40);
    const wide = await screen.shows(/^█{120}$/m);
    expect(wide.trimEnd().split('\n')).toHaveLength(40);
    expect(wide).toContain('Stop it now, at the real stop.');
    await working;
    await screen.shows('left with 1');
    const journal = readFileSync(join(out, 'journal.ndjson'), 'utf8');
    expect(journal).toContain('"kind":"danger"');
  });

  it('sends a line of one’s own after it was typed, shown back and agreed to', async () => {
    const { screen, out, leave } = await onScreen(
      'own-line',
      [],
      { leaves: (ask) => ask.action === 'move' },
      '--own-line',
    );
    await screen.shows('a line of your own', 60_000);
    screen.type('t');
    expect(await screen.shows('Motion can start at once.')).toContain('It cannot stop the machine.');
    screen.typeText('JOG X 5');
    await screen.shows('JOG X 5_');
    screen.type('Enter');
    await screen.shows('These bytes would be written to the port: JOG X 5\\x0d\\x0a');
    screen.typeText('yes');
    screen.type('Enter');
    await screen.shows('Written to the port: JOG X 5\\x0d\\x0a');
    screen.type('q');
    await screen.shows('left with 2');
    await leave();
    expect(readFileSync(join(out, 'capture.log'), 'latin1')).toMatch(/ tx JOG X 5\\x0d\\x0a\n/);
    expect(readFileSync(join(out, 'report.md'), 'utf8')).toMatch(/typed by the operator.*JOG X 5/);
  });
});

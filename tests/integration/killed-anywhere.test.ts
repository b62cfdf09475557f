import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { Person } from './person.ts';
import { Running, served, verdictsOf } from './processes.ts';

const place = mkdtempSync(join(tmpdir(), 'tellwire-'));
const machine = join(place, 'machine.yaml');
writeFileSync(machine, scenarioFile);
const children: Running[] = [];
afterAll(() => {
  for (const { child } of children) child.kill('SIGKILL');
  rmSync(place, { recursive: true, force: true });
});

const faults = ['crossed:x-home,y-home', 'normally-open:x-far'];
const asked = [
  '--only',
  'x-home,y-home,x-far',
  '--checks',
  'rest,press,open-wire',
  '--rest',
  '1s',
  '--presses',
  '1',
];
const kills = 50;
const lanes = 5;

/** A bench and its person who live on while sessions with them come and go. */
async function lane() {
  const { bench, port } = await served('tcp://127.0.0.1:0', faults);
  children.push(bench);
  const person = new Person((hand) => bench.say(hand));
  const begin = (folder: string, resume: boolean): Running => {
    const session = new Running([
      'commission',
      '--port',
      port,
      '--operator',
      'json',
      '--out',
      folder,
      ...(resume ? ['--resume'] : ['--machine', machine, ...asked]),
    ]);
    children.push(session);
    person.attend((line) => session.say(line));
    session.on((event) => person.take(event));
    return session;
  };
  return { begin, person };
}

/** Numbers between 0 and 1 that are the same in every run (the minimal standard generator of Park and Miller, 1988). */
function minimalStandard(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Kills sessions at random moments until there were enough; each is resumed to its end. Returns what each ended with. */
async function killed(count: number, seed: number) {
  const random = minimalStandard(seed);
  const { begin, person } = await lane();
  const ends: {
    readonly verdicts: readonly string[];
    readonly code: number | null;
    readonly errors: string;
  }[] = [];
  let left = count;
  while (left > 0) {
    const folder = join(place, `lane-${seed}-${ends.length}`);
    let resume = false;
    for (;;) {
      const session = begin(folder, resume);
      const lives = left > 0 ? 300 + 4000 * random() : 0;
      const timer = lives > 0 ? setTimeout(() => session.child.kill('SIGKILL'), lives) : undefined;
      const { code, signal, errors } = await session.closed;
      clearTimeout(timer);
      person.forget();
      if (signal === 'SIGKILL') {
        left--;
        // The header is the last file a new session writes: killed before it stood, nothing had begun, and what lies there is in the way.
        resume = existsSync(join(folder, 'session.json'));
        if (!resume) rmSync(folder, { recursive: true, force: true });
        continue;
      }
      ends.push({ verdicts: verdictsOf(session.events), code, errors });
      break;
    }
  }
  return ends;
}

describe('a session killed at any moment', () => {
  it(`ends, resumed, as if it had not been: ${kills} kills`, { timeout: 600_000 }, async () => {
    const whole = await lane().then(({ begin }) => begin(join(place, 'whole'), false));
    const { code } = await whole.closed;
    const expected = verdictsOf(whole.events);
    expect(expected).toHaveLength(9);
    expect(code).toBe(1);
    const ends = (
      await Promise.all(Array.from({ length: lanes }, (_, each) => killed(kills / lanes, each + 1)))
    ).flat();
    for (const end of ends) expect(end).toEqual({ verdicts: expected, code: 1, errors: '' });
    console.log(
      `${kills} kills in ${ends.length} sessions, each ended with the verdicts of the session nobody killed`,
    );
  });
});

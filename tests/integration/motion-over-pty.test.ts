import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { replay } from '../../src/session/replay.ts';
import { describeWithSocat } from '../transport/socat.ts';
import { Person } from './person.ts';
import { Running, served, verdictsOf } from './processes.ts';

const cleanUp: (() => void)[] = [];
afterEach(() => {
  for (const each of cleanUp.splice(0)) each();
});

/** Each axis is first brought near its home switch: what is watched is the same, and takes less time. mm from where it stands; ms. */
const nearHome = [
  { axis: 'X', distance: -206, takes: 3900 },
  { axis: 'Y', distance: -134, takes: 2700 },
  { axis: 'Z', distance: 28, takes: 1900 },
] as const;

const checks = ['press', 'stop', 'seek', 'homing', 'stopping', 'envelope'] as const;

/** A sound machine: each switch, the stop, each axis and the frame of the three is shown, and nothing is found. `check subject: status kinds`. */
const mustBeFound = [
  ...['stop', 'x-home', 'y-home', 'z-home'].map((subject) => `press ${subject}: proved`),
  'stop stop: proved',
  ...['X', 'Y', 'Z', 'axes'].map((subject) => `seek ${subject}: proved`),
  ...['homing', 'stopping', 'envelope'].flatMap((check) =>
    ['X', 'Y', 'Z'].map((axis) => `${check} ${axis}: proved`),
  ),
].sort();

describeWithSocat('the motion of a sound three-axis bench over a pseudo terminal, in real time', () => {
  it('is watched from the first press to the last homing, and judged the same from its folder', {
    timeout: 180_000,
  }, async () => {
    const { bench, port } = await served('pty');
    cleanUp.push(() => bench.child.kill());
    for (const { axis, distance, takes } of nearHome) {
      bench.say({ do: 'move', axis, distance });
      await pause(takes);
    }
    const place = mkdtempSync(join(tmpdir(), 'tellwire-motion-'));
    cleanUp.push(() => rmSync(place, { recursive: true, force: true }));
    const machine = join(place, 'machine.yaml');
    const out = join(place, 'session');
    writeFileSync(machine, scenarioFile);
    const began = performance.now();
    const session = new Running([
      ...['commission', '--port', port, '--machine', machine, '--operator', 'json', '--out', out],
      ...['--only', 'x-home,y-home,z-home,stop', '--checks', checks.join(), '--presses', '1', '--rest', '1s'],
    ]);
    cleanUp.push(() => session.child.kill());
    const person = new Person((hand) => bench.say(hand));
    person.attend((line) => session.say(line));
    session.on((event) => person.take(event));
    const { code, errors } = await session.closed;
    const took = (performance.now() - began) / 1000;
    console.log(`three axes moved and watched over a pty in ${took.toFixed(0)} s`);
    expect(errors).toBe('');
    expect(session.events.filter(({ kind }) => kind === 'danger')).toEqual([]);
    const found = verdictsOf(session.events).map((line) => line.replace(/^(\S+ \S+: \S+) \S+/, '$1'));
    expect(found).toEqual(mustBeFound);
    expect(code).toBe(0);
    // Positions really went by on the wire: each axis came to its machine zero and stood elsewhere before.
    const capture = readFileSync(join(out, 'capture.log'), 'latin1');
    expect(capture).toMatch(/,homing,/);
    const again = replay(out);
    expect(again.parted).toBe(false);
    expect(
      again.facts.verdicts.map(({ check, subject, status }) => `${check} ${subject} ${status}`).sort(),
    ).toEqual(
      session.events
        .flatMap(({ kind, check, subject, status }) =>
          kind === 'verdict' ? [`${check} ${subject} ${status}`] : [],
        )
        .sort(),
    );
  });
});

import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { describeWithSocat } from '../transport/socat.ts';
import { Person } from './person.ts';
import { Running, served, verdictsOf } from './processes.ts';

const cleanUp: (() => void)[] = [];
afterEach(() => {
  for (const each of cleanUp.splice(0)) each();
});

function folder(): string {
  const path = mkdtempSync(join(tmpdir(), 'tellwire-'));
  cleanUp.push(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

/** A bench, a session and a person, each with the others only through a port and lines of JSON. */
async function commissioned(
  serve: string,
  faults: readonly string[],
  inspect?: (session: Running, port: string) => void,
) {
  const { bench, port } = await served(serve, faults);
  cleanUp.push(() => bench.child.kill());
  const place = folder();
  const machine = join(place, 'machine.yaml');
  writeFileSync(machine, scenarioFile);
  const session = new Running([
    'commission',
    '--port',
    port,
    '--machine',
    machine,
    '--operator',
    'json',
    '--out',
    join(place, 'session'),
    '--only',
    'x-home,y-home,z-home',
    '--rest',
    '2s',
    '--presses',
    '1',
    '--checks',
    'rest,press,open-wire',
  ]);
  cleanUp.push(() => session.child.kill());
  const person = new Person((hand) => bench.say(hand));
  person.attend((line) => session.say(line));
  session.on((event) => person.take(event));
  await session.first('ask');
  inspect?.(session, port);
  const { code, errors } = await session.closed;
  return { code, errors, session, place };
}

const crossedAndBroken = ['crossed:y-home,z-home', 'broken-wire:x-home'];
const mustBeFound = [
  'open-wire x-home: failed told already-open stuck-active',
  'open-wire y-home: failed edge answers-elsewhere',
  'open-wire z-home: failed edge answers-elsewhere',
  'press x-home: failed told stuck-active',
  'press y-home: failed edge answers-elsewhere',
  'press z-home: failed edge answers-elsewhere',
  'rest x-home: proved commanded',
  'rest y-home: proved commanded',
  'rest z-home: proved commanded',
];

/** Whether a process holds a file open, and whether it has the native serial binding in its memory. */
const holdsOpen = (pid: number, path: string): boolean =>
  readdirSync(`/proc/${pid}/fd`).some((fd) => readlinkSync(`/proc/${pid}/fd/${fd}`) === path);
const mapsBinding = (pid: number): boolean =>
  /bindings-cpp.*\.node/.test(readFileSync(`/proc/${pid}/maps`, 'utf8'));

describeWithSocat('a session, a bench and a person in three processes over a pseudo terminal', () => {
  it('commissions through the native serial binding', { timeout: 90_000 }, async () => {
    let looked = false;
    const { code, errors, session, place } = await commissioned(
      'pty',
      crossedAndBroken,
      ({ child }, port) => {
        expect(holdsOpen(child.pid ?? 0, realpathSync(port))).toBe(true);
        expect(mapsBinding(child.pid ?? 0)).toBe(true);
        looked = true;
      },
    );
    expect(looked).toBe(true);
    expect(errors).toBe('');
    expect(verdictsOf(session.events)).toEqual(mustBeFound);
    expect(code).toBe(1);
    expect(session.events.at(-1)?.kind).toBe('finished');
    expect(existsSync(join(place, 'session', 'report.html'))).toBe(true);
  });
});

describe('a session, a bench and a person in three processes over tcp', () => {
  it('commissions with the same findings', { timeout: 90_000 }, async () => {
    const { code, errors, session } = await commissioned('tcp://127.0.0.1:0', crossedAndBroken);
    expect(errors).toBe('');
    expect(verdictsOf(session.events)).toEqual(mustBeFound);
    expect(code).toBe(1);
  });
});

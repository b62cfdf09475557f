import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { answerKeys } from '../../src/console/faces/answer-keys.ts';
import { workByJournal } from '../integration/by-journal.ts';
import { Person } from '../integration/person.ts';
import { served } from '../integration/processes.ts';
import { describeBuilt, program } from './built.ts';
import { hasTmux, Terminal } from './terminal.ts';

const place = mkdtempSync(join(tmpdir(), 'tellwire-faces-'));
const cleanUp: (() => void)[] = [
  () => rmSync(place, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 }),
];
afterAll(() => {
  for (const each of cleanUp.reverse()) each();
});

type Say = (answer: { readonly id: number; readonly answer: keyof typeof answerKeys }) => void;

/** How a person’s answer reaches the program at each face. */
const faces: Readonly<Record<'json' | 'lines' | 'screen', (args: readonly string[]) => Say>> = {
  json: (args) => {
    const child = piped(args);
    return (answer) => child.stdin.write(`${JSON.stringify(answer)}\n`);
  },
  lines: (args) => {
    const child = piped(args);
    return ({ answer }) => child.stdin.write(`${answer}\n`);
  },
  screen: (args) => {
    const terminal = new Terminal('faces', [process.execPath, program, ...args].join(' '));
    cleanUp.push(() => terminal.hangUp());
    return ({ answer }) => terminal.type(answerKeys[answer]);
  },
};

function piped(args: readonly string[]) {
  const child = spawn(process.execPath, [program, ...args], { stdio: ['pipe', 'ignore', 'inherit'] });
  child.stdin.on('error', () => {});
  cleanUp.push(() => child.kill());
  return child;
}

/** Commissions a bench of its own at one face; what is asked is read from the journal, which is on disk before it is shown. */
async function commissioned(face: keyof typeof faces): Promise<readonly string[]> {
  const { bench, port } = await served('tcp://127.0.0.1:0', ['crossed:y-home,z-home', 'normally-open:x-far']);
  cleanUp.push(() => bench.child.kill());
  const out = join(place, face);
  const machine = join(place, `${face}.yaml`);
  writeFileSync(machine, scenarioFile);
  const only = [
    '--only',
    'y-home,z-home,x-far',
    '--presses',
    '1',
    '--rest',
    '2s',
    '--checks',
    'rest,press,open-wire',
  ];
  const say = faces[face]([
    'commission',
    '--port',
    port,
    '--machine',
    machine,
    '--operator',
    face,
    '--out',
    out,
    ...only,
  ]);
  const person = new Person((hand) => bench.say(hand));
  await workByJournal(
    out,
    person,
    (answer) => say(answer as Parameters<Say>[0]),
    () => existsSync(join(out, 'report.json')),
  );
  return verdictsIn(join(out, 'report.json'));
}

interface Written {
  readonly check: string;
  readonly subject: string;
  readonly status: string;
  readonly evidence: string;
  readonly findings: readonly { readonly facts: { readonly kind: string } }[];
}

const verdictsIn = (report: string): readonly string[] =>
  (JSON.parse(readFileSync(report, 'utf8')) as { verdicts: readonly Written[] }).verdicts
    .map(({ check, subject, status, evidence, findings }) =>
      [check, subject, status, evidence, ...findings.map(({ facts }) => facts.kind).sort()].join(' '),
    )
    .sort();

// Crossed wires answer on each other's input; a normally open contact reads unplugged as at rest.
const mustBeFound = [
  'open-wire x-far limited edge break-undetected declared-otherwise',
  'open-wire y-home failed edge answers-elsewhere',
  'open-wire z-home failed edge answers-elsewhere',
  'press x-far proved edge',
  'press y-home failed edge answers-elsewhere',
  'press z-home failed edge answers-elsewhere',
  'rest x-far proved commanded',
  'rest y-home proved commanded',
  'rest z-home proved commanded',
];

describeBuilt('three faces', [['tmux', hasTmux]], () => {
  it('give the same verdicts on the same bench', { timeout: 180_000 }, async () => {
    const [json, lines, screen] = await Promise.all([
      commissioned('json'),
      commissioned('lines'),
      commissioned('screen'),
    ]);
    expect(json).toEqual(mustBeFound);
    expect(lines).toEqual(mustBeFound);
    expect(screen).toEqual(mustBeFound);
  });
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { scenario } from '../../src/bench/scenario.ts';
import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import type { FaceEvent, Reply } from '../../src/session/operator.ts';
import { endingLike, faultIn, longestOwnLine } from '../../src/session/own-line.ts';
import { replay } from '../../src/session/replay.ts';
import { remove, temporaryFolder, type VirtualOutcome, virtualSession } from './virtual-session.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) remove(folder);
});

const truth = {
  ...scenario,
  axes: scenario.axes.map((axis) => (axis.letter === 'X' ? { ...axis, stands: 60 } : axis)),
};

type AlsoSays = (event: FaceEvent, say: (reply: Reply) => void) => void;

/** The first seek of X, by a person who also says something. */
async function seek(alsoSays: AlsoSays, ownLine = true, faults: readonly string[] = []) {
  const folder = temporaryFolder();
  folders.push(folder);
  const outcome = await virtualSession({
    folder,
    bench: { truth, faults },
    session: { checks: ['press', 'stop', 'seek'], presses: 1, only: ['x-home', 'stop'], ownLine },
    alsoSays,
  });
  const lines = (name: string) => readFileSync(join(folder, name), 'latin1').trimEnd().split('\n');
  return { folder, outcome, capture: lines('capture.log'), journal: lines('journal.ndjson') };
}

/** At the first ask of that action she types a line; where it is shown back she agrees, or does not. */
function typesAt(action: string, text: string, agreed: boolean): AlsoSays {
  let typed = false;
  return (event, say) => {
    if (event.kind === 'ask' && event.ask.action === action && !typed) {
      typed = true;
      say({ kind: 'own-line', text });
    }
    if (event.kind === 'own-line' && event.step === 'shown-back') say({ kind: 'own-line-settled', agreed });
  };
}

const told = ({ events }: VirtualOutcome): readonly string[] =>
  events.flatMap((event) => (event.kind === 'own-line' ? [event.step, ...event.lines] : []));
const sentIn = (capture: readonly string[]): readonly string[] =>
  capture.flatMap((line) => / tx (.*)$/.exec(line)?.[1] ?? []);

describe('a line of the operator’s own', () => {
  it('is shown back with its caution, and written as typed where she agrees: in the capture, the journal, the report', async () => {
    const { folder, outcome, capture, journal } = await seek(typesAt('move', 'JOG X 5', true));
    const [step, bytes, ...rest] = told(outcome);
    expect(step).toBe('shown-back');
    expect(bytes).toContain('JOG X 5\\x0d\\x0a');
    expect(rest.join(' ')).toContain('Motion can start at once.');
    expect(rest.join(' ')).toContain('It cannot stop the machine.');
    expect(sentIn(capture)).toEqual(['JOG X 5\\x0d\\x0a']);
    const own = journal.map((line) => JSON.parse(line)).filter(({ kind }) => kind === 'own-line');
    expect(own).toMatchObject([{ text: 'JOG X 5\r\n' }]);
    const notices = outcome.events.flatMap((event) => (event.kind === 'notice' ? [event.text] : []));
    expect(notices).toContain('Written to the port: JOG X 5\\x0d\\x0a');
    expect(outcome.facts.sent).toMatchObject([{ text: 'JOG X 5\r\n', own: true }]);
    const markdown = formats.md(buildRecord(outcome.facts)).text;
    expect(markdown).toMatch(/typed by the operator.*JOG X 5\\+x0d\\+x0a/);
    const again = replay(folder);
    expect(again.parted).toBe(false);
    expect(formats.md(buildRecord(again.facts)).text).toBe(markdown);
    expect(
      outcome.facts.verdicts.find(({ check, subject }) => check === 'seek' && subject === 'X')?.status,
    ).toBe('proved');
  });

  it('is not written where she does not agree', async () => {
    const { outcome, capture } = await seek(typesAt('move', 'JOG X 5', false));
    expect(told(outcome).slice(-2)).toEqual(['over', 'Nothing was sent.']);
    expect(sentIn(capture)).toEqual([]);
  });

  it.each([
    ['the ask is over', 'ended', []],
    ['an axis heads away', 'danger', ['home-end-wrong:X']],
  ] as const)('is not written where she agrees after %s', async (_, kind, faults) => {
    const { outcome, capture } = await seek(
      (event, say) => {
        if (event.kind === 'ask' && event.ask.action === 'seek') say({ kind: 'own-line', text: 'JOG X 5' });
        if (event.kind === kind) say({ kind: 'own-line-settled', agreed: true });
      },
      true,
      faults,
    );
    expect(outcome.events.some((event) => event.kind === kind)).toBe(true);
    expect(told(outcome)).toContain('What was asked is over meanwhile. Nothing was sent.');
    expect(sentIn(capture)).toEqual([]);
  });

  it('is taken only while she is asked to move the machine or to clear a halt', async () => {
    const { outcome, capture } = await seek(typesAt('press', 'JOG X 5', true));
    expect(told(outcome).join(' ')).toContain('only while you are asked to move the machine');
    expect(sentIn(capture)).toEqual([]);
  });

  it('is refused, and offered at no ask, where it was not switched on', async () => {
    const { outcome, capture } = await seek(typesAt('move', 'JOG X 5', true), false);
    expect(told(outcome)).toEqual([]);
    expect(outcome.events.filter((event) => event.kind === 'refused')).toMatchObject([
      { found: 'a line of your own' },
    ]);
    expect(outcome.events.some((event) => event.kind === 'ask' && event.ownLine)).toBe(false);
    expect(sentIn(capture)).toEqual([]);
  });

  it.each([
    ['', { kind: 'empty' }],
    ['   ', { kind: 'empty' }],
    ['A\x03B', { kind: 'not-printable', character: '\x03', place: 2 }],
    ['A\nB', { kind: 'not-printable', character: '\n', place: 2 }],
    ['5 µm', { kind: 'not-printable', character: 'µ', place: 3 }],
    ['\x7f', { kind: 'not-printable', character: '\x7f', place: 1 }],
    ['A'.repeat(81), { kind: 'too-long', length: 81 }],
  ])('is one line of printable characters: %j is not', (text, fault) => {
    expect(faultIn(text)).toEqual(fault);
  });

  it('may be as long as it says, and ends as the lines of the stream do', () => {
    expect(faultIn('A'.repeat(longestOwnLine))).toBeUndefined();
    expect(longestOwnLine).toBe(80);
    expect([undefined, 'S?\n', 'S?\r', 'S?'].map(endingLike)).toEqual(['\r\n', '\n', '\r', '\r\n']);
  });
});

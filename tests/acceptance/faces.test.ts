import { beforeAll, describe, expect, it } from 'vitest';
import { planted } from '../../src/bench/demo.ts';
import { ScreenState } from '../../src/console/painting/screen-state.ts';
import {
  judged,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  virtualSession,
} from '../session/virtual-session.ts';
import { everyFace } from './every-way-out.ts';

/** The words a person reads, and what they stand for in the protocol. */
const checks: Readonly<Record<string, string>> = {
  Rest: 'rest',
  Press: 'press',
  'Open wire': 'open-wire',
  Stop: 'stop',
};
const statuses: Readonly<Record<string, string>> = {
  Steady: 'proved',
  'Steady, inactive': 'proved',
  'Steady, ACTIVE': 'proved',
  Proved: 'proved',
  'Proved with limitation': 'limited',
  'Not tested': 'not-tested',
  Inconclusive: 'inconclusive',
  Failed: 'failed',
};
const levels: Readonly<Record<string, string>> = {
  'no evidence': 'configured',
  told: 'told',
  reported: 'commanded',
  'seen once': 'edge',
  'seen three times or more': 'repeated',
};

/** `check subject: status evidence kinds` of verdicts told as sentences; the last of each check and subject. */
function readAloud(lines: readonly string[]): readonly string[] {
  const last = new Map<string, string[]>();
  let own: string[] = [];
  for (const line of lines) {
    const head = /^Verdict: ([\w ]+?)(?:, (\S+))?: ([\w ,]+) \(([\w ]+)\)\.$/.exec(line);
    const kind = /^ {2}.+ \(([a-z-]+)\)$/.exec(line)?.[1];
    if (head) {
      const [, title = '', subject = title.toLowerCase(), word = '', level = ''] = head;
      own = [statuses[word] ?? word, levels[level] ?? level];
      last.set(`${checks[title]} ${subject}`, own);
    } else if (kind) own.push(kind);
    else own = [];
  }
  return [...last]
    .map(([key, [status, evidence, ...kinds]]) => `${key}: ${[status, evidence, ...kinds.sort()].join(' ')}`)
    .sort();
}

function asJson(text: string): readonly string[] {
  const last = new Map<string, string>();
  for (const line of text.trimEnd().split('\n')) {
    const { kind, check, subject, status, evidence, findings } = JSON.parse(line);
    if (kind !== 'verdict') continue;
    const kinds = (findings as readonly { readonly kind: string }[]).map((each) => each.kind).sort();
    last.set(`${check} ${subject}`, [status, evidence, ...kinds].join(' '));
  }
  return [...last].map(([key, said]) => `${key}: ${said}`).sort();
}

describe('the three faces of one session', () => {
  let outcome: VirtualOutcome;
  let shown: ReadonlyMap<string, string>;

  beforeAll(async () => {
    const folder = temporaryFolder();
    outcome = await virtualSession({ folder, bench: { faults: [...planted, 'chatters:probe'] } });
    shown = everyFace(outcome);
    remove(folder);
  }, 60_000);

  it('tells a program what the record holds', () => {
    expect(judged(outcome).length).toBeGreaterThan(25);
    expect(asJson(shown.get('json') ?? '')).toEqual(judged(outcome));
  });

  it('tells a reader of lines the same', () => {
    expect(readAloud((shown.get('lines') ?? '').split('\n'))).toEqual(judged(outcome));
  });

  it('tells on the screen the same, verdict after verdict', () => {
    const state = new ScreenState(outcome.facts.machine);
    const lines = outcome.events.flatMap((event) => {
      state.take(event, 0);
      return event.kind === 'verdict' ? state.verdict : [];
    });
    expect(readAloud(lines)).toEqual(judged(outcome));
    for (const head of lines.filter((line) => line.startsWith('Verdict:')))
      expect(shown.get('screen'), head).toContain(head.slice(0, 60));
  });

  it('ends at each with the same report and exit', () => {
    const { report, exit } = outcome;
    expect(JSON.parse((shown.get('json') ?? '').trimEnd().split('\n').at(-1) ?? '')).toMatchObject({
      kind: 'finished',
      report,
      exit,
    });
    expect(shown.get('lines')).toContain(`Report: ${report}`);
    expect(shown.get('lines')).toContain(`Exit ${exit}:`);
    expect((shown.get('screen') ?? '').split('\f').at(-1)).toContain('report.html');
  });
});

import type { AskRecord, SessionFacts } from '../../src/model/session-facts.ts';
import { missShareAtMost95 } from '../../src/model/statistics.ts';
import { ms, seconds } from '../../src/model/units.ts';
import type { Facts, Verdict } from '../../src/model/verdict.ts';
import { wiringsOf } from '../../src/session/wirings.ts';
import { askWords } from '../../src/words/ask-words.ts';
import { flatTrace, pressTrace, pulledTrace, seen } from './traces.ts';
import { workshop } from './workshop.ts';

const base = { evidence: 'repeated', findings: [], missing: [], facts: {}, traces: [] } as const;
const nc = { closedAtRest: true, activeWhenOpen: true };
const no = { closedAtRest: false, activeWhenOpen: false };

const quiet = (subject: string): Verdict => ({
  ...base,
  check: 'rest',
  subject,
  status: 'proved',
  evidence: 'commanded',
  facts: { resolution: seen, rest: { level: 'L', active: '0', quietFor: ms(10_000), edges: 0 } },
  traces: [flatTrace(subject, 'rest', 4_000, 10_000, true, false)],
});

const pressFacts: Facts = {
  resolution: seen,
  presses: { asked: 3, answered: 3, missShareAtMost95: missShareAtMost95(3) },
};

const pressed = (subject: string, input: string, from: number, shape = nc): Verdict => ({
  ...base,
  check: 'press',
  subject,
  status: 'proved',
  facts: pressFacts,
  traces: [0, 1, 2].map((i) => pressTrace(input, from + i * 4000, 900 + 150 * i, shape)),
});

const wire = (subject: string, input: string, from: number, more: Partial<Verdict>): Verdict => ({
  ...base,
  check: 'open-wire',
  subject,
  status: 'proved',
  evidence: 'edge',
  facts: {
    resolution: seen,
    row: { bits: '011', by: 'active' },
    contactFound: 'normally closed',
    unpluggedAt: 'switch',
  },
  traces: [
    pulledTrace(input, from, false, true),
    flatTrace(input, 'press-while-out', from + 9000, 2400, false, true),
    pressTrace(input, from + 20_000, 1000, { ...nc, label: 'press-after-replug' }),
  ],
  ...more,
});

const untested = (check: Verdict['check'], subject: string, missing: Verdict['missing']): Verdict => ({
  ...base,
  check,
  subject,
  status: 'not-tested',
  evidence: 'configured',
  missing,
});

const verdicts: readonly Verdict[] = [
  ...['x-home', 'x-far', 'y-limits', 'z-top', 'plate', 'door', 'stop'].map(quiet),
  pressed('x-home', 'x-home', 30_000),
  pressed('x-far', 'x-far', 50_000, no),
  pressed('y-limits/y-min', 'y-limits', 70_000),
  untested('press', 'y-limits/y-max', ['out-of-reach']),
  {
    ...pressed('z-top', 'z-top', 90_000, { closedAtRest: true, activeWhenOpen: false }),
    status: 'failed',
    findings: [{ kind: 'polarity-reversed', input: 'z-top' }],
  },
  pressed('plate', 'plate', 110_000, no),
  {
    ...base,
    check: 'press',
    subject: 'door',
    status: 'failed',
    evidence: 'told',
    findings: [{ kind: 'never-changes', input: 'door' }],
    facts: { resolution: seen, presses: { asked: 2, answered: 0 } },
    traces: [
      flatTrace('door', 'press', 130_000, 6000, true, false),
      flatTrace('door', 'press', 137_000, 5000, true, false),
    ],
  },
  pressed('stop', 'stop', 150_000),
  wire('x-home', 'x-home', 200_000, {}),
  wire('x-far', 'x-far', 240_000, {
    status: 'limited',
    findings: [
      { kind: 'break-undetected', input: 'x-far', breaks: [] },
      { kind: 'declared-otherwise', declared: 'normally closed', found: 'normally open' },
    ],
    facts: {
      resolution: seen,
      row: { bits: '010', by: 'active' },
      contactFound: 'normally open',
      unpluggedAt: 'controller',
    },
    traces: [
      flatTrace('x-far', 'out', 240_000, 1904, false, false),
      flatTrace('x-far', 'press-while-out', 249_000, 2400, false, false),
      pressTrace('x-far', 260_000, 1000, { ...no, label: 'press-after-replug' }),
    ],
  }),
  {
    ...wire('y-limits/y-min', 'y-limits', 280_000, {}),
    status: 'inconclusive',
    missing: ['control-press'],
    facts: { resolution: seen },
  },
  untested('open-wire', 'y-limits/y-max', ['out-of-reach']),
  wire('z-top', 'z-top', 320_000, {
    status: 'failed',
    findings: [{ kind: 'polarity-reversed', input: 'z-top' }],
    facts: {
      resolution: seen,
      row: { bits: '100', by: 'active' },
      contactFound: 'normally closed',
      unpluggedAt: 'switch',
    },
    traces: [pulledTrace('z-top', 320_000, true, false)],
  }),
  untested('open-wire', 'plate', ['skipped']),
  untested('open-wire', 'door', ['voltage-unknown']),
  untested('open-wire', 'stop', ['cannot']),
  {
    ...base,
    check: 'stop',
    subject: 'stop',
    status: 'proved',
    evidence: 'told',
    facts: { powerShownBy: 'lamp' },
    traces: [pressTrace('stop', 400_000, 2400, { ...nc, label: 'stop' })],
  },
  {
    ...base,
    check: 'open-wire',
    subject: 'stream',
    status: 'proved',
    evidence: 'commanded',
    findings: [{ kind: 'stream-gaps', gaps: 1, lost: 3, unreadable: 2 }],
  },
];

const asks = [
  { check: 'rest', action: 'hands-off', seconds: seconds(10) },
  { check: 'press', action: 'power', what: 'motors', to: 'off', seconds: seconds(120) },
  {
    check: 'press',
    action: 'press',
    subject: 'x-home',
    round: 1,
    rounds: 3,
    expect: 'answer',
    deaf: [],
    seconds: seconds(20),
  },
  {
    check: 'open-wire',
    action: 'unplug',
    subject: 'x-far',
    at: 'controller',
    conductor: 'signal plug',
    seconds: seconds(120),
  },
] as const;

const dialogue: readonly AskRecord[] = asks.map((ask, i) => {
  const { text, cautions } = askWords(ask, workshop);
  return {
    id: i + 1,
    again: undefined,
    check: ask.check,
    subject: 'subject' in ask ? ask.subject : undefined,
    text,
    cautions,
    from: ms(4000 + i * 20_000.125),
    to: ms(14_000 + i * 20_000.125),
    by: i === 0 ? 'time' : i === 2 ? 'seen' : 'answer',
    answer: i === 1 || i === 3 ? 'done' : undefined,
  };
});

/** A whole session on the workshop machine: three failures, one limitation, some things out of reach. */
export const weekend: SessionFacts = {
  tool: { version: '0.1.0', rules: 1 },
  started: '2026-02-14T09:05:41.250Z',
  port: '/dev/ttyUSB0',
  machine: workshop,
  machineHash: '3b0f8c6f0f5c1d3a9a1d2f7be0c4d5e6f708192a3b4c5d6e7f8091a2b3c4d5e6',
  captureHash: 'c0ffee00112233445566778899aabbccddeeff00112233445566778899aabbcc',
  asked: { checks: ['rest', 'press', 'open-wire', 'stop'], presses: 3, rest: seconds(10), only: undefined },
  verdicts,
  dialogue,
  register: [],
  stream: {
    inputs: ['x-home', 'x-far', 'y-limits', 'z-top', 'plate', 'door', 'stop'],
    axes: ['X', 'Y', 'Z'],
    lines: 26_214,
    reports: 26_102,
    median: ms(16),
    longest: ms(1204.6),
    lost: 3,
    gaps: 1,
    restarts: 0,
    unreadable: { 'wrong-sum': 2 },
  },
  /** Of the first two inputs alone: each takes a good part of a second. */
  wirings: wiringsOf({ ...workshop, inputs: workshop.inputs.slice(0, 2) }, verdicts),
  sent: [{ at: ms(812.5), text: '$PTWRQ*hh\\r\\n' }],
  stopped: false,
};

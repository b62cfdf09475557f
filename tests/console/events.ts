import { type Ask, type AskAction, answersTo } from '../../src/model/ask.ts';
import type { Machine } from '../../src/model/machine.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import type { StatusReading } from '../../src/model/reading.ts';
import { ms, seconds } from '../../src/model/units.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import type { ShownAsk } from '../../src/session/operator.ts';
import { askWords } from '../../src/words/ask-words.ts';

export const machineText = `
machine: Small mill
inputs:
  x-home: { duty: [home, limit], axis: X, place: left end of the long axis, contact: normally closed }
  y-home: { duty: [home, limit], axis: Y, place: front, contact: normally closed }
  y-limits:
    joined: series
    switches:
      y-min: { axis: Y, end: negative, duty: [limit], place: behind the belt }
axes: { X: { travel: 300 }, Y: { travel: 200 }, Z: { travel: 80 } }
`;

export function machine(): Machine {
  const read = readMachineFile(machineText);
  if (!read.machine) throw new Error(JSON.stringify(read.problems));
  return read.machine;
}

export function shown(id: number, action: AskAction, check: Ask['check'] = 'press', time = 20): ShownAsk {
  const ask = { check, seconds: seconds(time), ...action } as Ask;
  const { text, cautions } = askWords(ask, machine());
  return { kind: 'ask', id, ask, text, cautions, answers: answersTo(ask) };
}

export const press = (subject: string, round = 1, rounds = 3, expect: 'answer' | 'no-answer' = 'answer') =>
  ({ action: 'press', subject, round, rounds, expect, deaf: [] }) as const;

export const heard = (input: string, active: '1' | '0', arrived = 0) =>
  ({ kind: 'heard', arrived: ms(arrived), input, level: active === '1' ? 'H' : 'L', active }) as const;

export const verdict: Verdict = {
  check: 'open-wire',
  subject: 'x-home',
  status: 'limited',
  evidence: 'edge',
  findings: [{ kind: 'break-undetected', input: 'x-home', breaks: [] }],
  missing: [],
  facts: {},
  traces: [],
};

/** Nothing came of it, for the session ended before it. */
export const notReached = (check: Verdict['check'], subject: string): Verdict => ({
  ...verdict,
  check,
  subject,
  status: 'not-tested',
  evidence: 'configured',
  findings: [],
  missing: ['stopped'],
});

/** A status report of some inputs, as the decoder hands it over. */
export function status(arrived: number, active: Readonly<Record<string, '1' | '0'>>): StatusReading {
  const inputs = Object.keys(active);
  return {
    kind: 'status',
    arrived: ms(arrived),
    at: ms(arrived),
    segment: 1,
    lost: 0,
    inputs,
    axes: [],
    activity: 'still',
    levels: inputs.map((name) => (active[name] === '1' ? 'H' : 'L')),
    active: inputs.map((name) => active[name] ?? '?'),
    positions: [],
  };
}

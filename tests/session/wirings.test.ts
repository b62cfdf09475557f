import { expect, it } from 'vitest';
import { volts } from '../../src/model/units.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { wiringsOf } from '../../src/session/wirings.ts';
import { input, workshop } from '../report/workshop.ts';

const own = (...inputs: Parameters<typeof input>[]) => ({
  ...workshop,
  inputs: inputs.map((each) => input(...each)),
});
const limit = (subject: string) => ({ subject, duty: ['limit'] }) as const;
const found = (subject: string): Verdict => ({
  check: 'open-wire',
  subject,
  status: 'failed',
  evidence: 'edge',
  findings: [],
  missing: [],
  facts: { contactFound: 'normally open' },
  traces: [],
});

it('computes switches of the same circuit together, and one that was found otherwise apart', () => {
  const machine = own(['a', {}, limit('a')], ['b', {}, limit('b')], ['c', {}, limit('c')]);
  const wirings = wiringsOf(machine, [found('c')]);
  expect(wirings.map(({ switches }) => switches)).toEqual([
    [
      { subject: 'a', contactFrom: 'declared' },
      { subject: 'b', contactFrom: 'declared' },
    ],
    [{ subject: 'c', contactFrom: 'found' }],
  ]);
  expect(wirings.map(({ study }) => study.wiring.contact)).toEqual(['normally closed', 'normally open']);
});

it('leaves out a circuit that is not named or not known, and never guesses one', () => {
  const unknown = { kind: 'unknown', supply: volts(5), values: {} } as const;
  const machine = own(
    ['a', {}, { ...limit('a'), circuit: undefined }],
    ['b', {}, { ...limit('b'), circuit: unknown }],
  );
  expect(wiringsOf(machine, [])).toEqual([]);
});

it('is not stopped by parts that no one would build with, nor by a short that cannot be computed', () => {
  for (const [text, states] of [
    ['0 ohm', undefined],
    ['1 ohm', 3],
    ['100 Mohm', 3],
  ] as const) {
    const circuit = {
      kind: 'contact to ground',
      supply: volts(5),
      values: { supply: '5 V', 'pull-up': text },
    } as const;
    const [wiring] = wiringsOf(own(['a', {}, { ...limit('a'), circuit }]), []);
    expect(wiring?.study.states.length).toBe(states);
  }
});

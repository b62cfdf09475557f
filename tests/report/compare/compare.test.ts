import { describe, expect, it } from 'vitest';
import type { SessionFacts } from '../../../src/model/session-facts.ts';
import { ms } from '../../../src/model/units.ts';
import type { Verdict } from '../../../src/model/verdict.ts';
import { buildRecord } from '../../../src/report/build-record.ts';
import { compared, compareText } from '../../../src/report/compare/compare-text.ts';
import { weekend } from '../weekend.ts';

const judged = (change: (verdict: Verdict) => Verdict): SessionFacts => ({
  ...weekend,
  verdicts: weekend.verdicts.map(change),
});
const beside = (now: SessionFacts) => compared(buildRecord(weekend), buildRecord(now));
const told = (now: SessionFacts): readonly string[] =>
  beside(now).differences.map(
    ({ topic, subject, what, old, new: is }) => `${topic} ${subject} ${what}: ${old} -> ${is}`,
  );
/** The same session with one switch at rest otherwise. */
const resting = (subject: string, level: 'H' | 'L', active: '0' | '1') =>
  judged((each) =>
    each.check === 'rest' && each.subject === subject && each.facts.rest
      ? { ...each, facts: { ...each.facts, rest: { ...each.facts.rest, level, active } } }
      : each,
  );

describe('two sessions', () => {
  it('that are the same do not differ, whenever and wherever they were', () => {
    const later = { ...weekend, started: '2030-01-01T00:00:00Z', port: 'tcp://elsewhere:1' };
    expect(beside(later)).toMatchObject({ differences: [], suggestions: [] });
    expect(compareText(beside(later))).toContain('Nothing differs.');
  });

  it.each([
    ['H', '1', /operated, its wire is open/],
    ['H', '0', /contact and setting were both changed/],
    ['L', '1', /polarity setting in the controller was changed/],
  ] as const)('with the rest at %s, read as %s, point to the cause', (level, active, cause) => {
    const { differences, suggestions } = beside(resting('x-home', level, active));
    expect(differences.every(({ topic, subject }) => topic === 'rest' && subject === 'x-home')).toBe(true);
    expect(suggestions).toHaveLength(1);
    expect(suggestions[0]).toMatch(cause);
  });

  it('in which two switches answer on each other’s inputs point to exchanged plugs', () => {
    const swap: Readonly<Record<string, string>> = { 'x-home': 'x-far', 'x-far': 'x-home' };
    const now = judged((each) => {
      const answeredBy = swap[each.subject];
      return each.check === 'press' && answeredBy ? { ...each, facts: { ...each.facts, answeredBy } } : each;
    });
    expect(told(now)).toContain('wiring x-home answers on: x-home -> x-far');
    expect(beside(now).suggestions).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/x-home and x-far.*exchanged/),
        expect.stringMatching(/connector J4/),
      ]),
    );
  });

  it('tell a wire whose break is noticed no more', () => {
    const now = judged((each) =>
      each.check === 'open-wire' && each.subject === 'x-home'
        ? {
            ...each,
            status: 'limited',
            findings: [{ kind: 'break-undetected', input: 'x-home', breaks: [] }],
          }
        : each,
    );
    expect(told(now)).toEqual([
      'wiring x-home broken wire noticed: yes -> no',
      'verdict x-home open-wire: proved -> limited',
      'verdict x-home open-wire findings: undefined -> break-undetected',
    ]);
    expect(beside(now).suggestions.join()).toMatch(/was noticed before and would go unnoticed/);
    const back = compared(buildRecord(now), buildRecord(weekend));
    expect(back.suggestions).toEqual(['break-undetected is no longer found on x-home, and it was tested.']);
  });

  it('compare the pace of the stream, not its wavering', () => {
    const paced = (factor: number): SessionFacts => ({
      ...weekend,
      stream: { ...weekend.stream, median: ms((weekend.stream.median ?? 0) * factor) },
    });
    expect(beside(paced(1.05)).differences).toEqual([]);
    expect(beside(paced(4)).suggestions.join()).toMatch(/further apart/);
    expect(beside(paced(0.25)).suggestions.join()).toMatch(/closer together/);
  });

  it('say when they were not asked the same', () => {
    const now = { ...weekend, asked: { ...weekend.asked, checks: ['rest' as const] } };
    expect(beside(now).suggestions[0]).toMatch(/did not ask for the same/);
  });

  it('know a switch that is on one side only', () => {
    const machine = {
      ...weekend.machine,
      inputs: weekend.machine.inputs.filter(({ name }) => name !== 'door'),
    };
    expect(told({ ...weekend, machine })).toContain('wiring door switch: in the machine file -> undefined');
  });
});

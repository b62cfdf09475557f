import { describe, expect, it } from 'vitest';
import type { SessionFacts } from '../../../src/model/session-facts.ts';
import { ms } from '../../../src/model/units.ts';
import type { Verdict } from '../../../src/model/verdict.ts';
import { buildRecord } from '../../../src/report/build-record.ts';
import { compareText } from '../../../src/report/compare/compare-text.ts';
import { compared } from '../../../src/report/compare/compared.ts';
import { leftOut } from '../../../src/words/left-out.ts';
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

  it('see no plug behind several inputs that were not tested on one side', () => {
    const now = judged((each) => ({ ...each, status: 'not-tested', facts: {}, findings: [] }));
    expect(beside(now).differences.length).toBeGreaterThan(5);
    expect(beside(now).suggestions.filter((each) => each.includes('connector'))).toEqual([]);
  });

  it('differ in no finding of a check that one of them did not make, and not at all where neither made it', () => {
    const untested = (each: Verdict): Verdict => ({ ...each, status: 'not-tested', facts: {}, findings: [] });
    const now = judged(untested);
    const onlyVerdicts = ({ differences }: ReturnType<typeof beside>) =>
      differences.filter(({ topic }) => topic === 'verdict');
    const parts = onlyVerdicts(beside(now)).map((each) => 'part' in each && each.part);
    expect(new Set(parts)).toEqual(new Set(['status']));
    const without = { ...weekend, verdicts: [] };
    expect(onlyVerdicts(compared(buildRecord(now), buildRecord(without)))).toEqual([]);
  });

  it('fit a terminal of 80 columns and say not tested where one side says nothing', () => {
    const text = compareText(beside(judged((each) => ({ ...each, facts: {} }))));
    for (const line of text.split('\n')) expect(line.length).toBeLessThan(80);
    expect(text).toMatch(/x-home, answers on: x-home -> not tested/);
  });
});

describe('sessions of two machines', () => {
  const [first, ...others] = weekend.machine.inputs;
  const lathe: SessionFacts = {
    ...judged((each) => (each.subject === 'x-far' ? { ...each, status: 'failed' } : each)),
    machine: { ...weekend.machine, name: 'Bench lathe', inputs: others },
  };
  const text = compareText(beside(lathe));
  const oneLine = text.replaceAll(/\s+/g, ' ');

  it('are said to be that before anything else, each with its name', () => {
    expect(text).toMatch(/^These are sessions of two different machines/);
    expect(text).toContain(`old: ${weekend.machine.name}`);
    expect(text).toContain('new: Bench lathe');
    expect(oneLine).toContain('Nothing below is a change');
  });

  it('have not changed: nothing turns into something else, and nothing is looked for', () => {
    expect(text).not.toContain('->');
    expect(beside(lathe).suggestions).toEqual([]);
    expect(text).not.toContain('Where to look');
  });

  it('name once what only one of them has', () => {
    const only = first?.switches.map(({ subject }) => subject) ?? [];
    expect(only.length).toBeGreaterThan(0);
    expect(oneLine).toContain(`Only on ${weekend.machine.name}: ${only.join(', ')}.`);
    for (const subject of only) expect(text).not.toContain(`${subject}, `);
  });

  it('are told apart for programs too', () => {
    expect(beside(lathe).machines).toMatchObject({ new: 'Bench lathe', same: false });
    expect(beside(weekend).machines.same).toBe(true);
  });

  it('are taken for one where a name was left out: nobody can know', () => {
    const redacted = { ...weekend, machine: { ...weekend.machine, name: leftOut } };
    expect(beside(redacted).machines.same).toBe(true);
  });
});

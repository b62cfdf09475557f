import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import type { Ask, LengthPlace } from '../../src/model/ask.ts';
import { type CheckName, checkNames, type Verdict } from '../../src/model/verdict.ts';
import { remove, virtualSession } from '../session/virtual-session.ts';

/** Everything that a person does in one session; false trips are counted with nobody near. */
const all = checkNames.filter((name) => name !== 'soak');

interface Tried {
  readonly faults?: readonly string[];
  readonly text?: string;
  readonly program?: string;
  readonly checks?: readonly CheckName[];
  /** What she reads off, where she is asked for it. */
  readonly values?: Readonly<Partial<Record<LengthPlace, number>>>;
  readonly says?: (ask: Ask) => 'no' | 'not-sure' | 'cannot' | undefined;
}

/** X and what it needs, from opening the port to the report. */
async function commissioned({
  faults = [],
  text = scenarioFile,
  program,
  checks = all,
  values,
  says,
}: Tried) {
  const folder = mkdtempSync(join(tmpdir(), 'lengths-'));
  try {
    const { facts } = await virtualSession({
      folder,
      bench: { faults },
      hands: { saysInstead: (ask) => says?.(ask) },
      alsoSays: (event, say) => {
        if (event.kind !== 'ask' || event.ask.action !== 'measure') return;
        const value = values?.[event.ask.where as LengthPlace];
        if (value !== undefined) say({ kind: 'answer', id: event.id, answer: 'value', value });
      },
      session: {
        machineText: text,
        checks,
        restSeconds: 2,
        presses: 1,
        cycles: 6,
        programText: program,
        only: ['x-home', 'x-far', 'stop'],
      },
    });
    return facts.verdicts;
  } finally {
    remove(folder);
  }
}

function told(verdicts: readonly Verdict[], check: CheckName, subject = 'X'): string {
  const last = verdicts.findLast((each) => each.check === check && each.subject === subject);
  return [last?.status, ...(last?.findings.map(({ kind }) => kind) ?? []), ...(last?.missing ?? [])].join(
    ' ',
  );
}

const factsOf = (verdicts: readonly Verdict[], check: CheckName, subject = 'X') =>
  verdicts.findLast((each) => each.check === check && each.subject === subject)?.facts;

describe('lengths of an axis that homes', () => {
  it('are shown in order where they are, each by its own evidence', async () => {
    const found = await commissioned({});
    for (const check of ['homing', 'repeat', 'stopping', 'envelope', 'scale'] as const)
      expect(told(found, check), check).toBe('proved');
    const { repeat, stopping } = { ...factsOf(found, 'repeat'), ...factsOf(found, 'stopping') };
    expect(repeat).toMatchObject({ n: 6, source: 'measured', startPoints: 3 });
    // By hand from the file: 15 mm/s for 10 ms, then 15² / (2 · 300): 0.15 mm + 0.375 mm; at half the speed 0.075 mm + 0.09375 mm.
    expect(stopping?.computed).toBeCloseTo(0.525, 3);
    expect(stopping?.halved).toBeCloseTo(0.16875, 4);
  }, 120_000);

  it('begin where the stream says they began, not where they were asked to', async () => {
    const found = await commissioned({
      checks: all.slice(0, 7),
      says: (ask) => (ask.check === 'repeat' && ask.action === 'move' ? 'cannot' : undefined),
    });
    expect(factsOf(found, 'repeat')?.repeat).toMatchObject({ n: 6, startPoints: 0 });
  }, 120_000);

  it('are commanded, not measured, where no gauge stands there', async () => {
    const found = await commissioned({
      checks: all.slice(0, 7),
      says: (ask) => (ask.action === 'confirm' && ask.topic === 'has-gauge' ? 'no' : undefined),
    });
    expect(factsOf(found, 'repeat')?.repeat?.source).toBe('commanded');
    expect(factsOf(found, 'repeat')?.repeat?.blur).toBeGreaterThan(0);
  }, 120_000);

  it('are too long in proportion where the steps are set for another screw, and the steps that mend it are named', async () => {
    const found = await commissioned({ faults: ['scale-off:X'] });
    expect(told(found, 'scale')).toMatch(/^failed scale-off/);
    const scale = factsOf(found, 'scale')?.scale;
    // The bench's own truth: 1.6 % too far, at 80 steps a millimetre.
    expect(Math.abs((scale?.ratio ?? 0) - 1.016)).toBeLessThan(0.001);
    expect(Math.abs((scale?.correctedSteps ?? 0) - 80 / 1.016)).toBeLessThan(0.08);
  }, 120_000);

  it('lose the play of a worn nut after a reversal, whatever the length', async () => {
    const found = await commissioned({ faults: ['backlash:X'] });
    expect(told(found, 'scale')).toMatch(/^limited backlash/);
    // The bench's own truth: 0.3 mm; each length is read within 0.05 mm.
    expect(Math.abs((factsOf(found, 'scale')?.scale?.backlash ?? 0) - 0.3)).toBeLessThan(0.1);
  }, 120_000);

  it('scatter where the bracket of the switch is loose', async () => {
    const found = await commissioned({ faults: ['bracket-loose:x-home'], checks: all.slice(0, 7) });
    expect(told(found, 'repeat')).toMatch(/^failed scattered-trips/);
  }, 120_000);

  it('are not enough where the ramp is so soft that the switch is driven past its overtravel', async () => {
    const found = await commissioned({
      faults: ['brakes-late:X'],
      checks: all.filter((each) => each !== 'repeat' && each !== 'scale'),
    });
    expect(told(found, 'stopping')).toMatch(/^failed overruns/);
  }, 120_000);
});

describe('the limits of a machine', () => {
  const envelope: readonly CheckName[] = ['rest', 'envelope'];

  it('are asked for where the file leaves them out, and stay open where nobody knows', async () => {
    const text = scenarioFile.replace('soft: [0, 606], ', '');
    const found = await commissioned({ text, checks: envelope });
    expect(told(found, 'envelope')).toBe('inconclusive soft-limits-unknown');
  }, 60_000);

  it('are outside where a soft limit lies past its switch, with the number that mends it', async () => {
    // By hand: the far switch trips at 609; its release 1 mm, home within 0.1 mm and 1 mm more must lie inside: 606.9.
    const text = scenarioFile.replace('soft: [0, 606]', 'soft: [5, 612]');
    const [finding] =
      (await commissioned({ text, checks: envelope })).find(
        ({ check, subject }) => check === 'envelope' && subject === 'X',
      )?.findings ?? [];
    expect(finding).toMatchObject({
      kind: 'soft-limits-outside',
      issue: 'soft-outside-switch',
      end: 'positive',
      by: 3,
      change: { from: 612, to: 606.9 },
    });
  }, 60_000);

  it('that fit each other on paper prove nothing before the homing that they count from was watched', async () => {
    expect(told(await commissioned({ checks: envelope }), 'envelope')).toBe('inconclusive homing-not-shown');
  }, 60_000);

  it('are mistyped where the soft range lies outside of home', async () => {
    const text = scenarioFile.replace('soft: [0, 606]', 'soft: [-606, -1]');
    expect(told(await commissioned({ text, checks: envelope }), 'envelope')).toMatch(
      /^failed soft-limits-mistyped/,
    );
  }, 60_000);

  it('are left by a program that goes too far, counted from machine zero', async () => {
    const program = 'G21 G90\nG53 G0 X650\nM2\n';
    const found = await commissioned({ program, checks: envelope });
    expect(told(found, 'envelope')).toMatch(/^failed outside-soft-limits/);
    expect(told(found, 'envelope', 'program')).toBe('proved');
  }, 60_000);

  it('are not judged against a program whose zero nobody told', async () => {
    const found = await commissioned({ program: 'G21 G90 G54\nG0 X650\nM2\n', checks: envelope });
    expect(told(found, 'envelope')).toBe('inconclusive homing-not-shown');
    expect(told(found, 'envelope', 'program')).toBe('inconclusive work-zero-unknown');
    expect(factsOf(found, 'envelope')?.envelope?.parts).toEqual([]);
  }, 60_000);

  it('are judged against a program whose work zero was told, a shift that was left over included', async () => {
    // By hand: the part reaches X 500 of G54; its zero lies at 100, and 12.5 more by the shift: 612.5, 6.5 past the soft limit at 606.
    const program = 'G21 G90 G54\nG0 X500\nM2\n';
    const values = { 'work zero in machine coordinates': 100, 'temporary shift': 12.5 } as const;
    const found = await commissioned({ program, checks: envelope, values });
    const [shift, outside] = ['work-offset-doubtful', 'outside-soft-limits'].map((kind) =>
      found
        .find(({ check, subject }) => check === 'envelope' && subject === 'X')
        ?.findings.find((each) => each.kind === kind),
    );
    expect(shift).toMatchObject({ issue: 'temporary-shift-active', by: 12.5 });
    expect(outside).toMatchObject({ axis: 'X', end: 'positive', by: 6.5, line: 2 });
    expect(told(found, 'envelope', 'program')).toBe('proved');
  }, 60_000);

  it('are not judged by what of a program was not followed: it is listed', async () => {
    const found = await commissioned({ program: 'G21 G90\nG1 X[#1+2] F100\nM2\n', checks: envelope });
    expect(told(found, 'envelope', 'program')).toMatch(/^inconclusive program-/);
    expect(factsOf(found, 'envelope', 'program')?.program?.notUnderstood[0]?.line).toBe(2);
  }, 60_000);
});

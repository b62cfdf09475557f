import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelopeIssues } from '../../../src/diagnose/envelope/conditions.ts';
import type { EnvelopeIssue } from '../../../src/diagnose/envelope/issue.ts';
import {
  type AxisLayout,
  layoutOf,
  softMargin,
  usableTravel,
} from '../../../src/diagnose/envelope/layout.ts';
import { mm } from '../../../src/model/units.ts';
import { machineFrom } from '../stage.ts';

/** X homes to its negative end and counts up from 0; trips at −3 and 424, metal 6 mm behind; lengths mm. */
const x: AxisLayout = {
  letter: 'X',
  homes: 'negative',
  homeValue: mm(0),
  backOff: mm(3),
  soft: [mm(0), mm(421)],
  travel: mm(427),
  ends: { negative: { trip: mm(-3), stop: mm(-9) }, positive: { trip: mm(424), stop: mm(430) } },
  stopAtRapid: mm(4.7),
  differential: mm(0.4),
  homeSpan: mm(0.05),
};
/** Z homes to its top and counts down from 0. */
const z: AxisLayout = {
  ...x,
  letter: 'Z',
  homes: 'positive',
  backOff: mm(2),
  soft: [mm(-88), mm(0)],
  travel: mm(92),
  ends: { negative: { trip: mm(-90), stop: mm(-96) }, positive: { trip: mm(2), stop: mm(8) } },
};

const told = (issues: readonly EnvelopeIssue[]) =>
  issues.map(({ kind, end, by }) => [kind, ...(end ? [end] : []), Number(by.toFixed(3))].join(' '));

describe('from the hard stop inwards', () => {
  it('nothing is to be said of an axis whose stops, trips, zero and soft limits lie in order', () => {
    expect(envelopeIssues(x)).toEqual([]);
    expect(envelopeIssues(z)).toEqual([]);
  });

  it('a soft limit past the switch is found on its side, by how much, with the limit to set', () => {
    const [issue] = envelopeIssues({ ...x, soft: [mm(0), mm(426)] });
    expect(issue).toMatchObject({ kind: 'soft-outside-switch', axis: 'X', end: 'positive', by: 2 });
    expect(issue?.change).toEqual({
      what: 'soft limit',
      from: 426,
      to: expect.closeTo(424 - softMargin(x), 9),
    });
  });

  it('a soft limit nearer to the switch than it frees, home wanders, and a millimetre is too near', () => {
    // 0.4 + 0.05 + 1 = 1.45 mm are needed, 1 mm is there.
    expect(told(envelopeIssues({ ...x, soft: [mm(0), mm(423)] }))).toEqual([
      'soft-too-near-switch positive 0.45',
    ]);
  });

  it('an end without a switch is held to its hard stop', () => {
    const bare = { ...x, ends: { ...x.ends, positive: { stop: mm(422) } } };
    expect(told(envelopeIssues(bare))).toEqual(['soft-outside-stop positive 0.45']);
  });

  it('between trip and metal there must be the stop from rapid and a millimetre', () => {
    const near = { ...x, ends: { ...x.ends, positive: { trip: mm(424), stop: mm(428) } } };
    expect(told(envelopeIssues(near))).toEqual(['little-room-to-stop positive 1.7']);
    expect(told(envelopeIssues({ ...near, stopAtRapid: undefined }))).toEqual([]);
  });

  it('a switch behind the metal is never reached', () => {
    const behind = { ...x, ends: { ...x.ends, positive: { trip: mm(424), stop: mm(423.5) } } };
    expect(told(envelopeIssues(behind))).toEqual(['switch-behind-stop positive 0.5']);
  });
});

describe('at the home end', () => {
  it('a back-off that does not leave the switch is too small', () => {
    // 0.4 + 0.5 mm are needed.
    const small = { ...x, backOff: mm(0.6), homeValue: mm(-2.4), soft: [mm(-1.5), mm(421)] as const };
    expect(told(envelopeIssues(small))).toContain('back-off-too-small 0.3');
  });

  it('a back-off longer than the travel reaches the other switch', () => {
    const short = { ...x, backOff: mm(430), ends: { ...x.ends } };
    expect(told(envelopeIssues(short))).toContain(
      `back-off-too-large ${(430 - (427 - 2 * 1.45)).toFixed(1)}`,
    );
  });

  it('a zero left where the switch tripped is off by the back-off', () => {
    const [issue] = envelopeIssues({ ...x, homeValue: mm(-3), soft: [mm(0), mm(421)] }).filter(
      ({ kind }) => kind === 'zero-not-at-home',
    );
    expect(issue).toMatchObject({ end: 'negative', by: 3, change: { what: 'home value', from: -3, to: 0 } });
  });

  it('an axis that stands outside its own soft limits after homing is told by how much', () => {
    expect(told(envelopeIssues({ ...x, soft: [mm(2), mm(421)] }))).toEqual(['home-outside-soft negative 2']);
  });
});

describe('numbers typed wrong', () => {
  // Common practice, no source: Z homes to its top, so its soft maximum is 0 and its minimum minus its stroke.
  it('a range typed upwards on an axis that counts down from its top has lost its sign', () => {
    const [issue] = envelopeIssues({ ...z, soft: [mm(0), mm(88)] });
    expect(issue).toMatchObject({ kind: 'soft-wrong-sign', axis: 'Z', end: 'positive', by: 88 });
    expect(issue?.change).toMatchObject({ from: 88, to: -88 });
  });

  it('the same on an axis that homes to its negative end', () => {
    expect(envelopeIssues({ ...x, soft: [mm(-421), mm(0)] })[0]).toMatchObject({
      kind: 'soft-wrong-sign',
      end: 'negative',
      by: 421,
    });
  });

  it('a range wrong as a whole is said once, not end by end', () => {
    expect(envelopeIssues({ ...z, soft: [mm(0), mm(88)] }).map(({ kind }) => kind)).toEqual([
      'soft-wrong-sign',
    ]);
  });

  it('inches typed as millimetres are known by their ratio', () => {
    expect(envelopeIssues({ ...x, soft: [mm(0), mm(421 / 25.4)] })[0]).toMatchObject({
      kind: 'soft-inches-as-mm',
    });
  });

  it('a range wider than the way between the switches cannot be kept', () => {
    expect(told(envelopeIssues({ ...x, soft: [mm(-4), mm(425)] }))).toContain('soft-wider-than-travel 2');
  });
});

describe('an envelope', () => {
  it('is the same seen from the other end: every sign and end turned about', () => {
    const length = fc.integer({ min: -60, max: 60 });
    fc.assert(
      fc.property(length, length, length, fc.integer({ min: 0, max: 9 }), (low, high, home, backOff) => {
        const here: AxisLayout = {
          ...x,
          soft: [mm(Math.min(low, high)), mm(Math.max(low, high) + 1)],
          homeValue: mm(home),
          backOff: mm(backOff),
        };
        const there: AxisLayout = {
          ...here,
          homes: 'positive',
          homeValue: mm(-home),
          soft: [mm(-(here.soft?.[1] ?? 0)), mm(-(here.soft?.[0] ?? 0))],
          ends: { negative: { trip: mm(-424), stop: mm(-430) }, positive: { trip: mm(3), stop: mm(9) } },
        };
        const turned = (issues: readonly EnvelopeIssue[]) =>
          told(
            issues.map((each) =>
              each.end
                ? { ...each, end: each.end === 'positive' ? ('negative' as const) : ('positive' as const) }
                : each,
            ),
          ).sort();
        expect(turned(envelopeIssues(here))).toEqual(told(envelopeIssues(there)).sort());
      }),
    );
  });

  it('says nothing where nothing is known', () => {
    const machine = machineFrom('machine: Bare\naxes: { X: {} }\ninputs: {}\n');
    expect(machine.axes.flatMap((axis) => envelopeIssues(layoutOf(axis)))).toEqual([]);
  });

  it('is laid out from the machine file, with what was observed before what was told', () => {
    const machine = machineFrom(
      'machine: M\naxes: { X: { travel: 420, homes: negative, soft: [2, 415], hard: [-3, 424], home value: 0, back-off: 3 mm, rapid: 3000 mm/min, acceleration: 300 mm/s2, reaction: 10 ms } }\ninputs: {}\n',
    );
    const [axis] = machine.axes;
    if (!axis) throw new Error('an axis');
    const layout = layoutOf(axis, { trips: { positive: mm(423) }, stops: { positive: mm(429) } });
    expect(layout.ends).toEqual({
      negative: { stop: undefined, trip: -3 },
      positive: { stop: 429, trip: 423 },
    });
    // 50 mm/s, 10 ms, 300 mm/s2: 0.5 + 4.1667 mm.
    expect(layout.stopAtRapid).toBeCloseTo(4.6667, 4);
    // 426 mm from trip to trip, less twice 1 + 0.1 + 1 mm.
    expect(usableTravel(layout)).toBeCloseTo(421.8, 9);
  });
});

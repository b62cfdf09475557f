import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/model/reading.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { contact, lines, machineFrom, play, type Truth } from './stage.ts';

const names = ['a', 'b', 'c'] as const;
const machineOf = (order: readonly string[]) =>
  machineFrom(
    `machine: Three\naxes: { X: { travel: 1 } }\ninputs:\n${order.map((name) => `  ${name}: { duty: [limit], place: ${name}, voltage: 5 V }\n`).join('')}`,
  );

interface Wiring {
  readonly kind: 'normally closed' | 'normally open';
  readonly activeWhen: 'open' | 'closed';
  readonly fault: 'none' | 'broken' | 'welded' | 'flickers';
}

const wiring: fc.Arbitrary<Wiring> = fc.record({
  kind: fc.constantFrom('normally closed', 'normally open'),
  activeWhen: fc.constantFrom('open', 'closed'),
  fault: fc.constantFrom('none', 'none', 'none', 'broken', 'welded', 'flickers'),
});
const wirings = fc.tuple(wiring, wiring, wiring);
const crossing = fc.constantFrom([0, 1, 2], [0, 1, 2], [1, 0, 2], [0, 2, 1]);

function truthOf(subject: string, { kind, activeWhen, fault }: Wiring): Truth {
  const sound = contact(subject, kind, activeWhen);
  if (fault === 'none') return sound;
  const level = (time: number): Level => {
    if (fault === 'flickers') return Math.floor(time / 300) % 2 === 0 ? 'H' : 'L';
    return fault === 'broken' ? 'H' : 'L';
  };
  return {
    level: ({ time }) => level(time),
    active: ({ time }) => ((level(time) === 'H') === (activeWhen === 'open') ? '1' : '0'),
  };
}

/** Truth of each input: the switch that lands on it. */
const truths = (
  all: readonly Wiring[],
  order: readonly number[],
  of: (truth: Truth) => Truth = (truth) => truth,
  called: readonly string[] = names,
) =>
  Object.fromEntries(
    names.map((_, input) => [
      called[input] ?? '',
      of(truthOf(called[order[input] ?? 0] ?? '', all[order[input] ?? 0] as Wiring)),
    ]),
  );

const findings = (verdicts: readonly Verdict[]) =>
  verdicts.map(({ check, subject, status, evidence, findings: found, missing }) => ({
    check,
    subject,
    status,
    evidence,
    found,
    missing,
  }));
const row = (verdicts: readonly Verdict[], subject: string) =>
  verdicts.find((each) => each.check === 'open-wire' && each.subject === subject)?.facts.row?.bits;
const invert = (bits: string) => [...bits].map((bit) => (bit === '1' ? '0' : '1')).join('');

const machine = machineOf(names);
const runs = { numRuns: 25 };
const judged = (world: Record<string, Truth>, more: Partial<Parameters<typeof play>[0]> = {}) =>
  play({ machine, truths: world, presses: 1, period: 25, ...more }).verdicts;

describe('laws of judging, whatever the wiring', () => {
  it('changes no verdict when all times are shifted', () => {
    fc.assert(
      fc.property(wirings, crossing, fc.integer({ min: 0, max: 5e8 }), (all, order, start) => {
        expect(findings(judged(truths(all, order), { start }))).toEqual(findings(judged(truths(all, order))));
      }),
      runs,
    );
  });

  it('swaps the findings of two inputs when their names are swapped', () => {
    fc.assert(
      fc.property(wirings, crossing, (all, order) => {
        const swapped = ['b', 'a', 'c'];
        const plain = JSON.stringify(lines(judged(truths(all, order))));
        const other = lines(
          play({
            machine: machineOf(swapped),
            truths: truths(all, order, undefined, swapped),
            presses: 1,
            period: 25,
          }).verdicts,
        );
        const renamed = other.map((each) =>
          each.replace(/ [ab]:/, (name) => (name === ' a:' ? ' b:' : ' a:')),
        );
        expect(JSON.stringify(renamed)).toBe(plain);
      }),
      runs,
    );
  });

  it('asks nothing of the levels where the active bit is told: inverting all levels changes no verdict', () => {
    const turned = (truth: Truth): Truth => ({
      ...truth,
      level: (world) => (truth.level(world) === 'H' ? 'L' : 'H'),
    });
    fc.assert(
      fc.property(wirings, crossing, (all, order) => {
        expect(findings(judged(truths(all, order, turned)))).toEqual(findings(judged(truths(all, order))));
      }),
      runs,
    );
  });

  it('maps the row bit for bit when only the polarity setting is turned', () => {
    const turned = (truth: Truth): Truth => ({
      ...truth,
      active: (world) => (truth.active(world) === '1' ? '0' : '1'),
    });
    let compared = 0;
    fc.assert(
      fc.property(wirings, crossing, (all, order) => {
        const plain = judged(truths(all, order));
        const other = judged(truths(all, order, turned));
        for (const name of names) {
          const before = row(plain, name);
          if (before === undefined) continue;
          compared++;
          expect(row(other, name)).toBe(invert(before));
        }
      }),
      runs,
    );
    expect(compared).toBeGreaterThan(20);
  });

  it('changes rest and press but never the unplugged level when only the contact is changed', () => {
    fc.assert(
      fc.property(fc.constantFrom('open', 'closed' as const), (activeWhen) => {
        const rows = (['normally closed', 'normally open'] as const).map((kind) => {
          const all = [
            { kind, activeWhen, fault: 'none' },
            { kind, activeWhen, fault: 'none' },
            { kind, activeWhen, fault: 'none' },
          ] as const;
          return row(judged(truths(all, [0, 1, 2])), 'a') ?? '';
        });
        const [closed = '', open = ''] = rows;
        expect(closed[2]).toBe(open[2]);
        expect(closed[0]).not.toBe(open[0]);
        expect(closed[1]).not.toBe(open[1]);
      }),
      { numRuns: 4 },
    );
  });
});

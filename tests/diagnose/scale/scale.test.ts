import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleCauses } from '../../../src/diagnose/scale/causes.ts';
import { fitScale, type ScaleRun } from '../../../src/diagnose/scale/fit.ts';
import { correctedSteps, judgeScale } from '../../../src/diagnose/scale/judge.ts';
import { mm } from '../../../src/model/units.ts';

/** What a tape shows of an axis with this ratio, backlash and held this far off. */
const measuredOn =
  (ratio: number, backlash: number, offset = 0) =>
  (commanded: number, way: 1 | -1, afterReversal: boolean): ScaleRun => ({
    commanded: mm(commanded),
    measured: mm(ratio * commanded + offset - (afterReversal ? backlash : 0)),
    way,
    afterReversal,
  });

const fourRuns = (run: ReturnType<typeof measuredOn>): readonly ScaleRun[] => [
  run(50, 1, false),
  run(300, 1, false),
  run(50, -1, true),
  run(300, -1, true),
];

describe('steps a millimetre', () => {
  it('are corrected by what was measured of what was commanded', () => {
    expect(correctedSteps(80, 99.2 / 100)).toBeCloseTo(80.645161, 6);
  });
});

describe('scale and backlash from lengths', () => {
  it('are told apart by two lengths: backlash is the same at both', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (ratio, backlash, offset) => {
          const fit = fitScale(fourRuns(measuredOn(ratio, backlash, offset)));
          expect(fit?.ratio).toBeCloseTo(ratio, 9);
          expect(fit?.backlash).toBeCloseTo(backlash, 7);
          expect(fit?.offset).toBeCloseTo(offset, 7);
        },
      ),
    );
  });

  it('do not follow from one length', () => {
    const run = measuredOn(1.01, 0.1);
    expect(fitScale([run(100, 1, false), run(100, -1, true)])).toBeUndefined();
  });

  it('stay the same when inches are measured on an inch machine', () => {
    const runs = fourRuns(measuredOn(1.004, 0.08));
    const inches = runs.map((run) => ({
      ...run,
      commanded: mm(run.commanded / 25.4),
      measured: mm(run.measured / 25.4),
    }));
    expect(fitScale(inches)?.ratio).toBeCloseTo(1.004, 9);
    expect((fitScale(inches)?.backlash ?? 0) * 25.4).toBeCloseTo(0.08, 7);
  });

  it('say that the two ways differ where one of them slips', () => {
    const good = measuredOn(1, 0);
    const slips = measuredOn(0.98, 0);
    const runs = [good(50, 1, false), good(300, 1, false), slips(50, -1, false), slips(300, -1, false)];
    const judged = judgeScale({ runs, stepsPerUnit: 80, readingError: mm(0.1), accepted: 0.001 });
    expect(judged?.waysDiffer).toBe(true);
  });

  it('are not called off by an error that the tape itself could make', () => {
    const judge = (ratio: number, readingError: number) =>
      judgeScale({
        runs: fourRuns(measuredOn(ratio, 0)),
        stepsPerUnit: 80,
        readingError: mm(readingError),
        accepted: 0.001,
      })?.says;
    expect(judge(1.002, 0.5)).toBe('too-coarse');
    expect(judge(1.002, 0.05)).toBe('off');
    expect(judge(1.0002, 0.05)).toBe('true');
  });

  it('call backlash only what two readings cannot explain', () => {
    const judge = (backlash: number) =>
      judgeScale({
        runs: fourRuns(measuredOn(1, backlash)),
        stepsPerUnit: undefined,
        readingError: mm(0.05),
        accepted: 0.001,
      });
    expect(judge(0.2)?.hasBacklash).toBe(true);
    expect(judge(0.05)?.hasBacklash).toBe(false);
  });
});

describe('what multiplies every length', () => {
  const kinds = (ratio: number) => scaleCauses(ratio).map(({ cause }) => cause.kind);

  // Ratios by arithmetic; which mistake is likely is common practice, no source.
  it.each([
    [2, 'microsteps'],
    [0.5, 'diameter-for-radius'],
    [25.4, 'inch-for-mm'],
    [1 / 25.4, 'inch-for-mm'],
    [5.08 / 5, 'inch-pitch'],
    [2 / 2.032, 'inch-pitch'],
    [Math.PI, 'forgotten-pi'],
    [Math.PI / 3, 'forgotten-pi'],
    [4, 'screw-starts'],
    [20 / 16, 'teeth'],
    [10 / 8, 'microsteps'],
    [8 / 5, 'lead'],
    [17 / 16, 'teeth'],
  ])('%f: %s is among the causes', (ratio, kind) => {
    expect(kinds(ratio)).toContain(kind);
  });

  it('names the pair that gives the ratio, the right way round', () => {
    const teeth = scaleCauses(36 / 20).find(({ cause }) => cause.kind === 'teeth');
    expect(teeth).toMatchObject({ ratio: 1.8 });
    // Set for sixteen, the driver makes eight: every step is twice as long.
    expect(scaleCauses(2).find(({ cause }) => cause.kind === 'microsteps')?.cause).toMatchObject({
      set: 2,
      real: 1,
    });
  });

  it('is no whole-number mistake where a belt is a little long', () => {
    expect(scaleCauses(1.0042)).toEqual([]);
    expect(scaleCauses(0.9961)).toEqual([]);
  });

  it('comes the likeliest first: a named mistake before a pair of wheels', () => {
    expect(kinds(25.4)[0]).toBe('inch-for-mm');
    expect(kinds(2)[0]).toBe('microsteps');
  });

  it('is above zero', () => {
    expect(() => scaleCauses(0)).toThrow(RangeError);
  });
});

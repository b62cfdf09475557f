import { describe, expect, it } from 'vitest';
import { positioningFigures, unidirectional } from '../../../src/diagnose/repeatability/iso230.ts';

/** A set of our own, worked by hand from the definitions of ISO 230-2:2014, clause 3 (from memory); micrometres. */
const targets = [
  { up: [1.2, 0.8, 1.0, 1.4, 1.1], down: [-0.5, -0.2, -0.4, -0.6, -0.3] },
  { up: [2.0, 2.3, 1.9, 2.2, 2.1], down: [0.6, 0.9, 0.7, 0.5, 0.8] },
];

describe('positioning figures as ISO 230-2 defines them', () => {
  const figures = positioningFigures(targets);

  it('are four standard deviations one way, and the reversal besides both ways', () => {
    const [first, second] = figures.targets;
    expect(first?.up).toEqual({
      mean: expect.closeTo(1.1, 9),
      s: expect.closeTo(0.2236068, 6),
      repeatability: expect.closeTo(0.8944272, 6),
    });
    expect(first?.down.repeatability).toBeCloseTo(0.6324555, 6);
    expect([first?.reversal, first?.repeatability]).toEqual([
      expect.closeTo(1.5, 9),
      expect.closeTo(2.2634414, 6),
    ]);
    expect([second?.reversal, second?.repeatability]).toEqual([
      expect.closeTo(1.4, 9),
      expect.closeTo(2.0324555, 6),
    ]);
  });

  it('are the worst of all targets for the axis', () => {
    expect(figures.repeatabilityUp).toBeCloseTo(0.8944272, 6);
    expect(figures.repeatabilityDown).toBeCloseTo(0.6324555, 6);
    expect(figures.repeatability).toBeCloseTo(2.2634414, 6);
    expect(figures.reversal).toBeCloseTo(1.5, 9);
    expect(figures.meanReversal).toBeCloseTo(1.45, 9);
    expect(figures.accuracy).toBeCloseTo(3.1324555, 6);
  });

  it('do not change with where zero is', () => {
    expect(unidirectional([401.2, 400.8, 401.0, 401.4, 401.1])).toBeCloseTo(0.8944272, 6);
  });

  it('need two runs from either way', () => {
    expect(() => positioningFigures([{ up: [1, 2], down: [1] }])).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { unidirectional } from '../../../src/diagnose/repeatability/iso230.ts';
import { sampleFigures } from '../../../src/diagnose/repeatability/sample.ts';

/** Sets of our own, worked by hand from the definition of ISO 230-2:2014, clause 3 (from memory); micrometres. */
describe('unidirectional repeatability as ISO 230-2 defines it', () => {
  it.each([
    ['one way', [1.2, 0.8, 1.0, 1.4, 1.1], 0.8944272],
    ['the other way', [-0.5, -0.2, -0.4, -0.6, -0.3], 0.6324555],
    ['wherever zero is', [401.2, 400.8, 401.0, 401.4, 401.1], 0.8944272],
  ])('is four standard deviations, %s', (_, deviations, repeatability) => {
    expect(unidirectional(sampleFigures(deviations))).toBeCloseTo(repeatability, 6);
  });
});

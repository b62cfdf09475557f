import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { determinant, type FrameMap, frameOf, type LinearAxis } from '../../../src/diagnose/frame/frame.ts';

const way = (axis: LinearAxis, sign: 1 | -1 = 1) => ({ axis, sign });
const asIs: FrameMap = { X: way('X'), Y: way('Y'), Z: way('Z') };

describe('the frame a machine moves in', () => {
  // ISO 841:2001: a right-handed rectangular system; thumb X, index finger Y, middle finger Z.
  it('is right-handed where every axis goes as commanded', () => {
    expect(frameOf(asIs)).toMatchObject({ kind: 'true', determinant: 1, inverted: [], exchanged: [] });
  });

  it.each(['X', 'Y', 'Z'] as const)('mirrors the part where %s alone is inverted', (axis) => {
    expect(frameOf({ ...asIs, [axis]: way(axis, -1) })).toMatchObject({
      kind: 'mirrored',
      determinant: -1,
      inverted: [axis],
    });
  });

  it('mirrors the part where all three are inverted, or two are only exchanged', () => {
    expect(frameOf({ X: way('X', -1), Y: way('Y', -1), Z: way('Z', -1) })).toMatchObject({
      kind: 'mirrored',
    });
    expect(frameOf({ ...asIs, X: way('Y'), Y: way('X') })).toMatchObject({
      kind: 'mirrored',
      exchanged: ['X', 'Y'],
    });
  });

  it('only turns the part where two are inverted, or two exchanged and one of them inverted', () => {
    expect(frameOf({ ...asIs, X: way('X', -1), Y: way('Y', -1) })).toMatchObject({
      kind: 'turned',
      determinant: 1,
    });
    expect(frameOf({ ...asIs, X: way('Y'), Y: way('X', -1) })).toMatchObject({
      kind: 'turned',
      determinant: 1,
    });
  });

  it('is judged in the plane where only two axes are known', () => {
    expect(frameOf({ X: way('X'), Y: way('Y', -1) })).toMatchObject({ kind: 'mirrored', axes: ['X', 'Y'] });
  });

  it('is none where an answer cannot be right', () => {
    expect(frameOf({ X: way('X') })).toEqual({ kind: 'too-few-axes' });
    expect(frameOf({ ...asIs, Y: way('X') })).toEqual({ kind: 'same-axis-twice', axis: 'X' });
    expect(frameOf({ X: way('X'), Y: way('Z') })).toEqual({ kind: 'leaves-the-plane', axis: 'Z' });
  });

  it('has the determinant of its matrix, and the handedness of its three moves', () => {
    const orders = [
      ['X', 'Y', 'Z'],
      ['Y', 'Z', 'X'],
      ['Z', 'X', 'Y'],
      ['Y', 'X', 'Z'],
      ['X', 'Z', 'Y'],
      ['Z', 'Y', 'X'],
    ] as const;
    const sign = fc.constantFrom(1 as const, -1 as const);
    fc.assert(
      fc.property(fc.constantFrom(...orders), sign, sign, sign, (order, ...signs) => {
        const map = Object.fromEntries(
          (['X', 'Y', 'Z'] as const).map((letter, i) => [letter, { axis: order[i], sign: signs[i] }]),
        ) as FrameMap;
        const frame = frameOf(map);
        if (!('matrix' in frame)) throw new Error('three distinct axes are a frame');
        const [x, y, z] = (['X', 'Y', 'Z'] as const).map((letter) => {
          // The column of a command is the way it takes the tool.
          const column = frame.axes.indexOf(letter);
          const along = (to: LinearAxis) => frame.matrix[frame.axes.indexOf(to)]?.[column] ?? 0;
          return [along('X'), along('Y'), along('Z')] as const;
        });
        if (!x || !y || !z) throw new Error('three moves');
        // The scalar triple product x × y · z.
        const cross = [
          x[1] * y[2] - x[2] * y[1],
          x[2] * y[0] - x[0] * y[2],
          x[0] * y[1] - x[1] * y[0],
        ] as const;
        const handed = cross[0] * z[0] + cross[1] * z[1] + cross[2] * z[2];
        expect(frame.determinant).toBe(handed);
        expect(determinant(frame.matrix)).toBe(handed);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { namesToTry, nearestNames } from '../../src/model/nearest.ts';

const names = ['x-home', 'y-home', 'x-far', 'probe', 'broken-wire', 'doors/hatch'];

describe('a name that is not known', () => {
  it.each([
    ['xhome', ['x-home', 'y-home']],
    ['X_Home', ['x-home', 'y-home']],
    ['porbe', ['probe']],
    ['broken', ['broken-wire']],
    ['door/hatch', ['doors/hatch']],
    ['spindle', []],
    ['', []],
  ])('%s brings up the nearest ones, the nearest first: %j', (typed, near) =>
    expect(nearestNames(typed, names)).toEqual(near),
  );

  it('brings up three at most, however many are near', () =>
    expect(nearestNames('limit', ['limit1', 'limit2', 'limit3', 'limit4'])).toEqual([
      'limit1',
      'limit2',
      'limit3',
    ]));

  it('brings up what is spelled in two ways once', () =>
    expect(nearestNames('rst', ['rest', 'Rest'])).toEqual(['rest']));

  it('is answered by a question before all that there is, and by that alone where nothing is near', () => {
    expect(namesToTry('xhome', names, 'There are six.')).toBe(
      'Did you mean x-home or y-home? There are six.',
    );
    expect(namesToTry('spindle', names, 'There are six.')).toBe('There are six.');
  });
});

import { describe, expect, it } from 'vitest';
import { type PlanPart, simulate } from '../../../scripts/simulated-seek.mjs';
import { onY, ySwitches } from './cases/parts.ts';
import { expectOn, alarms as raised } from './watching.ts';

/** A slow touch that ends at the second side's switch, or goes on. */
const touch = (until: string | undefined, most: number): readonly PlanPart[] => [
  { wait: 500 },
  { activity: 'homing', way: -1, speed: 2, most, ...(until !== undefined && { until }) },
  { wait: 300 },
];

const alarms = (plan: readonly PlanPart[], offset: number, dead = false) => {
  const both = ySwitches(offset);
  const switches = dead ? { ...both, 'y-right': { when: () => false } } : both;
  const { readings } = simulate({ axis: 'Y', acceleration: 300, ...onY({ plan, switches, stands: 4 }) });
  return raised(readings, expectOn('Y')).map(({ kind }) => kind);
};

describe('a beam with a switch on either side', () => {
  it('goes on after its first side has tripped until its second does: that is squaring, not pushing on', () => {
    expect(alarms(touch('y-right', 30), 0.3)).toEqual([]);
    expect(alarms(touch('y-right', 30), 5)).toEqual([]);
  });

  it('that goes on after both have tripped pushes on', () => {
    expect(alarms(touch(undefined, 20), 0.3)).toEqual(['pushes-on']);
  });

  it('whose second side never answers pushes on once it is past any squaring', () => {
    expect(alarms(touch(undefined, 30), 0.3, true)).toEqual(['pushes-on']);
  });
});

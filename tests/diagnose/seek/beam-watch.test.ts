import { describe, expect, it } from 'vitest';
import { type PlanPart, simulate } from '../../../scripts/simulated-seek.mjs';
import { expectationOf } from '../../../src/diagnose/seek/expect.ts';
import { SeekWatch } from '../../../src/diagnose/seek/watch.ts';
import { mm } from '../../../src/model/units.ts';
import { onY, ySwitches } from './cases/parts.ts';
import { rolesOf } from './played.ts';

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
  const expected = expectationOf(rolesOf('Y'), { rest: {}, step: mm(0.0125), gridKnown: true });
  const watch = new SeekWatch(expected);
  return readings.flatMap((reading) => watch.feed(reading)).map(({ kind }) => kind);
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

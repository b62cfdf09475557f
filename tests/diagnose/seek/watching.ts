import type { PlanPart } from '../../../scripts/simulated-seek.mjs';
import type { SeekAlarm } from '../../../src/diagnose/seek/alarm.ts';
import { expectationOf } from '../../../src/diagnose/seek/expect.ts';
import type { SeekExpectation } from '../../../src/diagnose/seek/expectation.ts';
import { SeekWatch } from '../../../src/diagnose/seek/watch.ts';
import type { Reading } from '../../../src/model/reading.ts';
import { mm } from '../../../src/model/units.ts';
import { rolesOf } from './played.ts';

export const expectOn = (axis: string): SeekExpectation =>
  expectationOf(rolesOf(axis), { rest: {}, step: mm(0.0125), gridKnown: true });

/** What the watch of one axis, X unless another is expected, raises over these reports. */
export function alarms(readings: readonly Reading[], expected = expectOn('X')): readonly SeekAlarm[] {
  const watch = new SeekWatch(expected);
  return readings.flatMap((reading) => watch.feed(reading));
}

export const kinds = (raised: readonly SeekAlarm[]): readonly string[] =>
  raised.map((each) => ('input' in each ? `${each.kind} ${each.input}` : each.kind));

/** Rest, then a seek the given way. */
export const run = (way: 1 | -1, most: number, ...more: readonly PlanPart[]): readonly PlanPart[] => [
  { wait: 500 },
  { activity: 'homing', way, speed: 15, most },
  ...more,
  { wait: 300 },
];
export const toSwitch: PlanPart = { activity: 'homing', way: -1, speed: 15, until: 'x-home', most: 60 };

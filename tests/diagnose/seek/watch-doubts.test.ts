import { describe, expect, it } from 'vitest';
import { simulate } from '../../../scripts/simulated-seek.mjs';
import type { Reading, StatusReading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';
import { onX } from './played.ts';
import { alarms, kinds, run, toSwitch } from './watching.ts';

describe('a report that is wrong, or missing, while an axis seeks', () => {
  it('one single report of another switch stops nobody', () => {
    const { readings } = simulate({ ...onX(), acceleration: 300 });
    const flicker = readings.map((each, i) => (i === 40 ? withActive(each, 'x-far') : each));
    expect(alarms(flicker)).toEqual([]);
  });

  it('another switch that noise opens for two reports and lets go again stops nobody; one that is held does', () => {
    const { readings } = simulate({ ...onX(), acceleration: 300, period: 10 });
    const held = (reports: number) =>
      readings.map((each, i) => (i >= 80 && i < 80 + reports ? withActive(each, 'x-far') : each));
    expect(alarms(held(2))).toEqual([]);
    expect(kinds(alarms(held(8)))).toEqual(['wrong-switch x-far']);
  });

  it('a position garbled for one report stops nobody', () => {
    const { readings } = simulate({ ...onX(), acceleration: 300 });
    const garbled = readings.map((each, i) => (i % 17 === 5 ? { ...each, positions: [mm(999)] } : each));
    expect(alarms(garbled)).toEqual([]);
  });

  it('a number that changes once while the switch is operated, and then stands, is no pushing on', () => {
    const { readings } = simulate({
      ...onX({ plan: [{ wait: 500 }, toSwitch, { wait: 400 }] }),
      acceleration: 300,
    });
    const last = readings.length - 10;
    const nudged = readings.map((each, i) =>
      i < last ? each : { ...each, positions: each.positions.map((at) => mm((at ?? 0) - 2)) },
    );
    expect(alarms(nudged)).toEqual([]);
  });

  it('a garbled position just before the trip does not make a pushing axis seem fast enough to need the way', () => {
    const { readings } = simulate({ ...onX({ plan: run(-1, 40) }), acceleration: 300 });
    const trip = readings.findIndex((each) => each.active[0] === '1');
    const garbled = readings.map((each, i) => (i === trip - 1 ? { ...each, positions: [mm(999)] } : each));
    expect(kinds(alarms(garbled))).toEqual(['pushes-on x-home']);
  });

  it('a garbled position does not make it forget that the axis is under way', () => {
    const crossed = { 'x-home': { when: () => false }, 'z-top': { actuates: 5, outwards: -1 } } as const;
    const { readings } = simulate({ ...onX({ plan: run(-1, 30), switches: crossed }), acceleration: 300 });
    const garbled = readings.map((each, i) => (i === 40 ? { ...each, positions: [mm(999)] } : each));
    expect(kinds(alarms(garbled))).toEqual(['wrong-switch z-top']);
  });

  it('after a silence nothing is concluded from where it now stands', () => {
    // Homed while nothing was told: it set off towards its switch and stands at its new zero, further out than before.
    const rest = simulate({ ...onX({ plan: [{ wait: 500 }] }), acceleration: 300 }).readings;
    const last = rest.at(-1);
    if (!last) throw new Error('no report');
    const told = (quiet: number) =>
      Array.from({ length: 30 }, (_, i) => ({
        ...last,
        at: ms(last.at + quiet + i * 20),
        arrived: ms(last.arrived + quiet + i * 20),
        positions: [mm(20 + Math.min(i, 3))],
      }));
    expect(kinds(alarms([...rest, ...told(20)]))).toEqual(['heads-away']);
    const standing = told(4000).map((each) => ({ ...each, positions: [mm(20)] }));
    expect(alarms([...rest, ...standing])).toEqual([]);
  });

  it('after a gap nothing is concluded from where it now stands, but a new trip counts', () => {
    const { readings } = simulate({ ...onX({ plan: run(-1, 40) }), acceleration: 300 });
    const gap: Reading = {
      kind: 'gap',
      arrived: readings[50]?.arrived ?? ms(0),
      segment: 2,
      why: 'lost-port',
    };
    const after = readings
      .slice(50)
      .map((each) => ({ ...each, segment: 2, positions: each.positions.map((at) => mm((at ?? 0) + 80)) }));
    expect(kinds(alarms([...readings.slice(0, 50), gap, ...after]))).toEqual(['pushes-on x-home']);
  });
});

/** The report with one more input active. */
function withActive(report: StatusReading, input: string): StatusReading {
  return {
    ...report,
    active: report.inputs.map((name, i) => (name === input ? '1' : (report.active[i] ?? '?'))),
  };
}

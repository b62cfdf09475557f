import { describe, expect, it } from 'vitest';
import { machineFor } from '../../src/bench/machines.ts';
import { portal, portalFile } from '../../src/bench/portal.ts';
import { scenario, scenarioFile } from '../../src/bench/scenario.ts';
import type { MachineTruth } from '../../src/bench/truth.ts';
import { allSwitches, type Machine } from '../../src/model/machine.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import { stand } from './stand.ts';

function machine(file: string): Machine {
  const read = readMachineFile(file);
  if (!read.machine) throw new Error(JSON.stringify(read.problems));
  return read.machine;
}

const both: readonly (readonly [string, string, MachineTruth])[] = [
  ['the router', scenarioFile, scenario],
  ['the portal', portalFile, portal],
];

describe('the machines of the bench', () => {
  it.each(both)(
    '%s has a file without a fault in it, which names its inputs and switches in order',
    (_, file, truth) => {
      const { inputs } = machine(file);
      expect(inputs.map(({ name }) => name)).toEqual(truth.inputs.map(({ name }) => name));
      expect(allSwitches(machine(file)).map(({ subject }) => subject)).toEqual(
        truth.inputs.flatMap(({ switches }) => switches.map(({ subject }) => subject)),
      );
    },
  );

  it.each(both)('%s moves with the numbers its file tells', (_, file, truth) => {
    for (const told of machine(file).axes) {
      const true_ = truth.axes.find(({ letter }) => letter === told.letter);
      if (!true_) throw new Error(`no axis ${told.letter}`);
      expect([told.homes, told.homeValue, told.backOff, told.motors]).toEqual([
        true_.homes,
        true_.homeValue,
        true_.backOff,
        true_.motors,
      ]);
      expect([told.approachSpeed, told.rapid, told.acceleration, told.reaction, told.step]).toEqual([
        true_.approach * 60,
        true_.rapid * 60,
        true_.acceleration,
        true_.reaction,
        true_.step,
      ]);
      expect([told.homeOrder, told.kind]).toEqual([true_.homeOrder, true_.turns ? 'rotary' : 'linear']);
      if (told.soft) expect(told.soft).toEqual(true_.soft);
    }
  });

  it.each(both)('%s comes home on every axis, in the order its file tells', (_, __, truth) => {
    const { bench, settle, last, told } = stand({ truth });
    bench.home('all');
    settle();
    expect(last()).toMatchObject({ activity: 'still', positions: truth.axes.map(() => 0) });
    const first = truth.axes.map(({ homeOrder }, axis) => ({
      homeOrder,
      at: told().findIndex(({ positions }) => positions[axis] !== 0),
    }));
    for (const one of first)
      for (const other of first) if (one.homeOrder < other.homeOrder) expect(one.at).toBeLessThan(other.at);
  });

  it('the portal is taken where a fault needs it, the router for all others', () => {
    expect(machineFor(['side-off:Y']).truth).toBe(portal);
    expect(machineFor(['shorter-way:A']).truth).toBe(portal);
    expect(machineFor(['mirrored:X', 'broken-wire:x-home']).truth).toBe(scenario);
    expect(machineFor([]).truth).toBe(scenario);
  });

  it('a whole homing of three axes costs a fifth of a second of one core at most, once warmed up', () => {
    const cost = () => {
      const { bench, settle, last } = stand({});
      const before = process.cpuUsage();
      bench.home('all');
      settle();
      expect(last().positions).toEqual([0, 0, 0]);
      return process.cpuUsage(before).user / 1000;
    };
    expect(Math.min(cost(), cost(), cost(), cost())).toBeLessThan(200);
  });
});

import { describe, expect, it } from 'vitest';
import { mustBeFound, planted } from '../../src/bench/demo.ts';
import { scenario, scenarioFile } from '../../src/bench/scenario.ts';
import { allSwitches, type Machine } from '../../src/model/machine.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import { stand } from './stand.ts';

function machine(): Machine {
  const read = readMachineFile(scenarioFile);
  if (!read.machine) throw new Error(JSON.stringify(read.problems));
  return read.machine;
}

describe('the scenario', () => {
  it('has a machine file without a fault in it', () => {
    expect(readMachineFile(scenarioFile).problems).toBeUndefined();
  });

  it('is the machine that its file declares: inputs, switches, contacts, settings, connectors', () => {
    const declared = machine().inputs.map(({ name, joined, polarity, connector, switches }) => ({
      name,
      joined,
      setting: polarity,
      connector,
      limit: switches.some(({ duty }) => duty.includes('limit')),
      switches: switches.map(({ subject, contact, duty }) => [subject, contact, duty.includes('stop')]),
    }));
    const true_ = scenario.inputs.map(({ name, joined, setting, connector, limit, switches }) => ({
      name,
      joined,
      setting,
      connector,
      limit,
      switches: switches.map(({ subject, contact, stop }) => [subject, contact, stop]),
    }));
    expect(true_).toEqual(declared);
  });

  it('has its axis switches where the file says, working inside the metal stops and outside the soft limits', () => {
    for (const { axis, end, subject } of allSwitches(machine()).filter((each) => each.axis !== undefined)) {
      const dog = scenario.inputs
        .flatMap(({ switches }) => switches)
        .find((each) => each.subject === subject)?.dog;
      const declared = machine().axes.find(({ letter }) => letter === axis);
      const [low = 0, high = 0] = scenario.axes.find(({ letter }) => letter === axis)?.stops ?? [];
      if (!dog || !declared?.soft) throw new Error(`${subject}: nothing to compare`);
      expect([dog.axis, dog.end]).toEqual([axis, end]);
      const soft = end === 'positive' ? declared.soft[1] : declared.soft[0];
      const metal = end === 'positive' ? high : low;
      const outwards = end === 'positive' ? 1 : -1;
      expect((dog.actuates - soft) * outwards).toBeGreaterThan(0);
      expect((metal - dog.actuates) * outwards).toBeGreaterThan(0);
      if (declared.hard) expect(dog.actuates).toBe(end === 'positive' ? declared.hard[1] : declared.hard[0]);
    }
  });

  it('has inputs that share a connector, and one input with several switches', () => {
    const connectors = scenario.inputs.map(({ connector }) => connector);
    expect(new Set(connectors).size).toBeLessThan(connectors.length);
    expect(scenario.inputs.some(({ switches }) => switches.length > 1)).toBe(true);
  });
});

describe('the first run', () => {
  it('plants three faults of different kinds that can stand together', () => {
    expect(new Set(planted.map((fault) => fault.split(':')[0]))).toEqual(
      new Set(['normally-open', 'crossed', 'broken-wire']),
    );
    expect(() => stand({ faults: planted })).not.toThrow();
  });

  it('expects a verdict on every input at rest, on every switch pressed and unplugged, and on the stop', () => {
    const subjects = (check: string) =>
      mustBeFound.filter((each) => each.check === check).map(({ subject }) => subject);
    const switches = allSwitches(machine()).map(({ subject }) => subject);
    expect(subjects('rest')).toEqual(scenario.inputs.map(({ name }) => name));
    expect(subjects('press')).toEqual(switches);
    expect(subjects('open-wire')).toEqual(switches);
    expect(subjects('stop')).toEqual(['stop']);
  });

  it('expects findings on what was planted and nothing anywhere else', () => {
    const named = new Set(planted.flatMap((fault) => fault.split(':')[1]?.split(',') ?? []));
    const found = new Set(mustBeFound.filter(({ kinds }) => kinds.length > 0).map(({ subject }) => subject));
    expect(found).toEqual(named);
    const wrong = mustBeFound.filter(({ status }) => status === 'failed' || status === 'limited');
    expect(wrong).toEqual(mustBeFound.filter(({ kinds }) => kinds.length > 0));
  });
});

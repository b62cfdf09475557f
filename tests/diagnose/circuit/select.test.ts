import { describe, expect, it } from 'vitest';
import { wiringOfSwitch } from '../../../src/diagnose/circuit/select.ts';
import { allSwitches, type Machine } from '../../../src/model/machine.ts';
import { circuitKinds } from '../../../src/model/machine-file/circuit-kinds.ts';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';

const machine = (inputs: string): Machine => {
  const read = readMachineFile(`machine: Test bench\naxes:\n  X: { travel: 100 }\ninputs:\n${inputs}`);
  if (!read.machine) throw new Error(JSON.stringify(read.problems));
  return read.machine;
};
const declared = (fields: string) => {
  const found = machine(`  one: { duty: [limit], ${fields} }\n`);
  const [first] = allSwitches(found);
  return first && wiringOfSwitch(found, first);
};

describe('a machine file’s circuit', () => {
  it.each([
    ['contact: normally open, circuit: { kind: contact to ground }', 'normally-open-to-ground'],
    ['contact: normally closed, circuit: { kind: contact to ground }', 'normally-closed-to-ground'],
    ['contact: normally closed, circuit: { kind: contact to supply }', 'normally-closed-to-supply'],
    ['sensor: npn, circuit: { kind: npn into pull-up }', 'npn-into-pull-up'],
    ['sensor: pnp, circuit: { kind: contact to ground }', 'pnp-into-pull-up'],
    ['sensor: npn, circuit: { kind: optocoupler fed from supply }', 'npn-into-fed-optocoupler'],
    ['sensor: two-wire, circuit: { kind: optocoupler fed from supply }', 'two-wire-into-optocoupler'],
    ['circuit: { kind: supervised contact }', 'supervised-contact'],
    ['circuit: { kind: touch plate }', 'touch-plate'],
  ])('%s is the wiring %s', (fields, name) => {
    expect(declared(fields)?.wiring.circuit.name).toBe(name);
  });

  it('is a stop button’s or a door’s where the duty says so', () => {
    const found = machine(
      '  stop: { duty: [stop], contact: normally closed, circuit: { kind: contact to ground } }\n' +
        '  door: { duty: [door], contact: normally closed, circuit: { kind: contact to ground } }\n',
    );
    const names = allSwitches(found).map((each) => wiringOfSwitch(found, each)?.wiring.circuit.name);
    expect(names).toEqual(['stop-status', 'door-status']);
  });

  it('is the shared line’s where several switches stand on one input', () => {
    const found = machine(
      '  both:\n    joined: series\n    switches:\n' +
        '      a: { duty: [limit], contact: normally closed, circuit: { kind: contact to ground } }\n' +
        '      b: { duty: [limit], contact: normally closed, circuit: { kind: contact to ground } }\n',
    );
    const [first] = allSwitches(found);
    expect(first && wiringOfSwitch(found, first)?.wiring.circuit.name).toBe('closed-contacts-in-series');
  });

  it('takes over the values told and says which they are', () => {
    const found = declared(
      'contact: normally closed, circuit: { kind: contact to ground, supply: 3.3 V, pull-up: 4.7 kohm }',
    );
    expect(found?.wiring.values['pull-up']?.nominal).toBe(4700);
    expect(found?.wiring.family).toBe('cmos 3.3 V');
    expect([...(found?.given ?? [])].sort()).toEqual(['pull-up', 'supply']);
  });

  it('that leaves the contact open is taken at the usual one and said to be assumed', () => {
    expect(declared('circuit: { kind: contact to ground }')).toMatchObject({
      contactAssumed: true,
      wiring: { contact: 'normally closed' },
    });
  });

  it('keeps a value it has no part for apart', () => {
    expect(declared('circuit: { kind: contact to ground, bleed: 1 kohm }')?.wiring.unused).toEqual(['bleed']);
  });

  it.each(circuitKinds.filter((kind) => kind !== 'unknown'))('of the kind %s can be computed', (kind) => {
    expect(declared(`circuit: { kind: ${kind} }`)).toBeDefined();
  });

  it('that is unknown or not told is not guessed', () => {
    expect(declared('circuit: { kind: unknown }')).toBeUndefined();
    expect(declared('contact: normally closed')).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import type { Axis, Machine, Switch } from '../../../src/model/machine.ts';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';
import { engraver } from './engraver.ts';

const machineOf = (text: string): Machine => {
  const read = readMachineFile(text);
  expect(read.problems).toBeUndefined();
  if (read.machine === undefined) throw new Error('not read');
  return read.machine;
};
const unsaidSwitch = {
  name: undefined,
  axis: undefined,
  end: undefined,
  side: undefined,
  place: undefined,
  contact: 'unknown',
  sensor: 'unknown',
  circuit: undefined,
  voltage: { known: 'not-stated' },
  reach: 'by hand',
  overtravel: undefined,
  motor: undefined,
} as const;
const unsaidAxis = {
  kind: 'linear',
  motors: 1,
  travel: undefined,
  homes: undefined,
  positive: undefined,
  moves: undefined,
  soft: undefined,
  hard: undefined,
  homeValue: undefined,
  backOff: undefined,
  approachSpeed: undefined,
  rapid: undefined,
  acceleration: undefined,
  reaction: undefined,
  step: undefined,
  homeOrder: undefined,
} as const;
const switchNamed = (machine: Machine, subject: string): Switch | undefined =>
  machine.inputs.flatMap((input) => input.switches).find((each) => each.subject === subject);
const axisNamed = (machine: Machine, letter: string): Axis | undefined =>
  machine.axes.find((axis) => axis.letter === letter);

describe('a machine file', () => {
  it('says of the machine what it says', () => {
    const machine = machineOf(engraver);
    expect({
      ...machine,
      inputs: machine.inputs.map((input) => input.name),
      axes: machine.axes.map((axis) => axis.letter),
    }).toEqual({
      name: 'Kitchen-table engraver',
      units: 'mm',
      stand: 'in front of the drawer',
      polarity: 'each',
      inputs: ['x-left', 'bridge', 'lid', 'plate', 'stop-told'],
      axes: ['X', 'Y', 'A'],
    });
  });

  it('describes an input with one switch, keeping a terminal that looks like a number as it is printed', () => {
    expect(machineOf(engraver).inputs[0]).toEqual({
      name: 'x-left',
      joined: 'single',
      polarity: 'active when open',
      terminal: '007',
      connector: 'P2',
      switches: [
        {
          subject: 'x-left',
          input: 'x-left',
          name: undefined,
          duty: ['home', 'limit'],
          axis: 'X',
          end: 'negative',
          side: 'left',
          place: 'behind the left foot of the bridge',
          contact: 'normally closed',
          sensor: 'contact',
          circuit: {
            kind: 'contact to ground',
            supply: 5,
            values: { supply: '5 V', 'pull-up': '4.7 kohm', filter: '100 nF' },
          },
          voltage: { known: 'volts', volts: 5, from: 'circuit' },
          reach: 'controller only',
          overtravel: 1.2,
          motor: undefined,
        },
      ],
    });
  });

  it('describes several switches on one input; what the input says holds for each that does not say otherwise', () => {
    const machine = machineOf(engraver);
    expect(machine.inputs[1]).toMatchObject({
      joined: 'series',
      terminal: 'D4',
      polarity: 'active when open',
    });
    expect(machine.inputs[1]?.switches).toEqual([
      {
        ...unsaidSwitch,
        subject: 'bridge/front',
        input: 'bridge',
        name: 'front',
        duty: ['home', 'limit'],
        axis: 'Y',
        end: 'negative',
        side: 'front',
        contact: 'normally closed',
      },
      {
        ...unsaidSwitch,
        subject: 'bridge/back',
        input: 'bridge',
        name: 'back',
        duty: ['limit'],
        axis: 'Y',
        end: 'positive',
        contact: 'normally open',
        motor: 2,
      },
    ]);
  });

  it('tells a voltage that is stated, one told unknown, and one nobody said anything of', () => {
    const machine = machineOf(engraver);
    expect(switchNamed(machine, 'plate')?.voltage).toEqual({ known: 'volts', volts: 3.3, from: 'voltage' });
    expect(switchNamed(machine, 'lid')?.voltage).toEqual({ known: 'told-unknown' });
    expect(switchNamed(machine, 'stop-told')?.voltage).toEqual({ known: 'not-stated' });
  });

  it('brings lengths to mm, speeds to mm/min, accelerations to mm/s2, times to ms', () => {
    const machine = machineOf(engraver);
    expect(axisNamed(machine, 'X')).toEqual({
      letter: 'X',
      kind: 'linear',
      motors: 1,
      travel: 300,
      homes: 'negative',
      positive: 'right',
      moves: 'tool',
      soft: [1, 297],
      hard: [-2, 302.5],
      homeValue: 0,
      backOff: 2,
      approachSpeed: 600,
      rapid: 2400,
      acceleration: 200,
      reaction: 8,
      step: 0.0125,
      homeOrder: 2,
    });
    expect(axisNamed(machine, 'Y')).toEqual({ ...unsaidAxis, letter: 'Y', motors: 2 });
  });

  it('takes A, B and C as rotary and counts them in degrees (ISO 841, from memory)', () => {
    expect(axisNamed(machineOf(engraver), 'A')).toEqual({
      ...unsaidAxis,
      letter: 'A',
      kind: 'rotary',
      travel: 360,
      soft: [-180, 180],
      rapid: 3600,
    });
  });

  // 25.4 mm to the inch exactly: international yard and pound agreement of 1959.
  it('reads bare lengths of an inch machine as inches, and degrees as degrees', () => {
    const machine = machineOf(
      'machine: m\nunits: inch\naxes: {X: {travel: 3, soft: [0.5, 30 mm], rapid: 100 in/min}, B: {travel: 90}}\ninputs: {a: {duty: [limit], axis: X, overtravel: 0.1}}',
    );
    expect(axisNamed(machine, 'X')).toMatchObject({ travel: 76.2, soft: [12.7, 30], rapid: 2540 });
    expect(axisNamed(machine, 'B')).toMatchObject({ travel: 90 });
    expect(switchNamed(machine, 'a')?.overtravel).toBe(2.54);
  });

  it('needs a name, axes and duties, and holds everything else for unknown', () => {
    const machine = machineOf('machine: m\naxes: {X: }\ninputs:\n  a: { duty: [limit], place: }\n');
    expect(machine).toEqual({
      name: 'm',
      units: 'mm',
      unitsAssumed: true,
      stand: undefined,
      polarity: 'unknown',
      inputs: [
        {
          name: 'a',
          joined: 'single',
          polarity: 'unknown',
          terminal: undefined,
          connector: undefined,
          switches: [{ ...unsaidSwitch, subject: 'a', input: 'a', duty: ['limit'] }],
        },
      ],
      axes: [{ ...unsaidAxis, letter: 'X' }],
    });
  });

  it('counts an axis that only a switch names among the axes, since it can drop like any other', () => {
    const machine = machineOf('machine: m\naxes: {X: }\ninputs: {z-top: {duty: [home], axis: Z}}');
    expect(machine.axes.map((axis) => axis.letter)).toEqual(['X', 'Z']);
  });

  it('reads the same with a byte order mark and with CR LF line ends', () => {
    expect(machineOf(`\ufeff${engraver.replaceAll('\n', '\r\n')}`)).toEqual(machineOf(engraver));
  });

  it('keeps what a person wrote about a place to the letter, markup and control bytes too', () => {
    const machine = machineOf('machine: m\naxes: {}\ninputs: {a: {duty: [limit], place: "<b>\\e[31m"}}');
    expect(switchNamed(machine, 'a')?.place).toBe('<b>\u001b[31m');
  });

  it('reads every unit sign a person may type', () => {
    const machine = machineOf(
      'machine: m\naxes: {X: {acceleration: 250 mm/s², step: 5 µm}, C: {travel: 360°}}\ninputs: {a: {duty: [limit], circuit: {kind: contact to ground, pull-up: 10 kΩ, supply: 5V}}}',
    );
    expect(axisNamed(machine, 'X')).toMatchObject({ acceleration: 250, step: 0.005 });
    expect(axisNamed(machine, 'C')).toMatchObject({ travel: 360 });
    expect(switchNamed(machine, 'a')?.circuit).toEqual({
      kind: 'contact to ground',
      supply: 5,
      values: { 'pull-up': '10 kΩ', supply: '5V' },
    });
  });
});

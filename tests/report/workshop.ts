import type { Input, Machine, Switch } from '../../src/model/machine.ts';
import { mm, volts } from '../../src/model/units.ts';

/** A machine of our own scenario: a plywood router in a shed, eight switches, wired by one person over a weekend. */
type Told = Partial<Switch> & Pick<Switch, 'subject' | 'duty'>;

export function switchOn(input: string, told: Told): Switch {
  return {
    input,
    name: told.subject.includes('/') ? told.subject.split('/')[1] : undefined,
    axis: undefined,
    end: undefined,
    side: undefined,
    place: undefined,
    contact: 'normally closed',
    sensor: 'contact',
    circuit: {
      kind: 'contact to ground',
      supply: volts(5),
      values: { supply: '5 V', 'pull-up': '10 kohm' },
    },
    voltage: { known: 'volts', volts: volts(5), from: 'circuit' },
    reach: 'by hand',
    overtravel: undefined,
    motor: undefined,
    ...told,
  };
}

export function input(name: string, told: Partial<Input>, ...switches: readonly [Told, ...Told[]]): Input {
  const [first, ...more] = switches;
  return {
    name,
    joined: 'single',
    polarity: 'active when open',
    terminal: undefined,
    connector: undefined,
    ...told,
    switches: [switchOn(name, first), ...more.map((each) => switchOn(name, each))],
  };
}

const axis = {
  kind: 'linear',
  motors: 1,
  travel: undefined,
  homes: undefined,
  positive: undefined,
  moves: 'tool',
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

export const workshop: Machine = {
  name: 'Plywood router in the shed',
  units: 'mm',
  stand: 'at the front, where the sheets are loaded',
  polarity: 'each',
  inputs: [
    input(
      'x-home',
      { terminal: 'IN1', connector: 'J4' },
      {
        subject: 'x-home',
        duty: ['home', 'limit'],
        axis: 'X',
        end: 'negative',
        side: 'left',
        place: 'left end of the long axis',
        overtravel: mm(2.5),
      },
    ),
    input(
      'x-far',
      { terminal: 'IN2', connector: 'J4', polarity: 'active when closed' },
      {
        subject: 'x-far',
        duty: ['limit'],
        axis: 'X',
        end: 'positive',
        place: 'right end of the long axis',
      },
    ),
    input(
      'y-limits',
      { joined: 'series', terminal: 'IN3', connector: 'J4' },
      { subject: 'y-limits/y-min', duty: ['home', 'limit'], axis: 'Y', end: 'negative', side: 'front' },
      {
        subject: 'y-limits/y-max',
        duty: ['limit'],
        axis: 'Y',
        end: 'positive',
        place: 'back, behind the brush',
        motor: 1,
        reach: 'never',
      },
    ),
    input(
      'z-top',
      { terminal: 'IN4', polarity: 'active when closed' },
      {
        subject: 'z-top',
        duty: ['home'],
        axis: 'Z',
        end: 'positive',
        place: 'top of the spindle slide',
        sensor: 'npn',
        circuit: undefined,
        voltage: { known: 'volts', volts: volts(24), from: 'voltage' },
      },
    ),
    input(
      'plate',
      { terminal: 'IN5', polarity: 'active when closed' },
      { subject: 'plate', duty: ['probe'], place: 'touch plate on its lead', contact: 'normally open' },
    ),
    input(
      'door',
      { terminal: 'IN6' },
      {
        subject: 'door',
        duty: ['door'],
        place: 'hood door, right hinge',
        voltage: { known: 'told-unknown' },
        circuit: undefined,
      },
    ),
    input(
      'stop',
      { terminal: 'IN7' },
      {
        subject: 'stop',
        duty: ['stop'],
        place: 'red mushroom at the front',
        circuit: undefined,
        voltage: { known: 'volts', volts: volts(24), from: 'voltage' },
      },
    ),
  ],
  axes: [
    { ...axis, letter: 'X', travel: mm(1250), homes: 'negative', positive: 'right' },
    { ...axis, letter: 'Y', travel: mm(640), homes: 'negative', positive: 'back', motors: 2 },
    { ...axis, letter: 'Z', travel: mm(90), homes: 'positive', positive: 'top' },
  ],
};

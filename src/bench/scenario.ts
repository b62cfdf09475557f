import { plainAxis } from './plain-axis.ts';
import type { Dog, InputTruth, MachineTruth, SwitchTruth } from './truth.ts';

/** The machine file a careful owner would have written for the scenario. */
export const scenarioFile = `# A router for sheets of plywood, rebuilt in a barn from an old engraving table.
machine: Kittiwake plywood router
units: mm
stand: at the front rail, where the sheets are laid on
polarity: each
inputs:
  x-home:
    duty: [home, limit]
    axis: X
    end: negative
    side: left
    place: left end of the long rail, below the cable chain
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "1"
    connector: P1
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
  x-far:
    duty: [limit]
    axis: X
    end: positive
    side: right
    place: right end of the long rail
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "2"
    connector: P1
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
  y-home:
    duty: [home, limit]
    axis: Y
    end: negative
    side: front
    place: under the front end of the left side beam
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "3"
    connector: P1
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
  y-far:
    duty: [limit]
    axis: Y
    end: positive
    side: back
    place: under the back end of the left side beam
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "4"
    connector: P2
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
  z-home:
    duty: [home, limit]
    axis: Z
    end: positive
    side: top
    place: at the top of the spindle column
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "5"
    connector: P2
    voltage: 5 V
    reach: by hand
    overtravel: 2 mm
  probe:
    duty: [probe]
    place: in the cork-lined drawer, on its coiled lead
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "6"
    connector: P3
    voltage: 5 V
    reach: by hand
  stop:
    duty: [stop]
    place: red mushroom button on the front rail
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "7"
    connector: P4
    voltage: 5 V
    reach: by hand
  doors:
    joined: series
    duty: [door]
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }
    polarity: active when open
    terminal: "8"
    connector: P4
    voltage: 5 V
    reach: by hand
    switches:
      flap: { place: hinge side of the front dust flap }
      hatch: { place: frame of the chip hatch at the back }
axes:
  X: { travel: 610 mm, homes: negative, positive: right, moves: tool, soft: [0, 606], hard: [-3, 609], home value: 0, back-off: 3 mm, approach speed: 900 mm/min, rapid: 3600 mm/min, acceleration: 300 mm/s2, reaction: 10 ms, step: 0.0125 mm, home order: 2 }
  Y: { travel: 440 mm, homes: negative, positive: back, moves: tool, soft: [0, 436], hard: [-3, 439], home value: 0, back-off: 3 mm, approach speed: 900 mm/min, rapid: 3600 mm/min, acceleration: 300 mm/s2, reaction: 10 ms, step: 0.0125 mm, home order: 2 }
  Z: { travel: 95 mm, homes: positive, positive: top, moves: tool, soft: [-91, 0], home value: 0, back-off: 3 mm, approach speed: 300 mm/min, rapid: 1200 mm/min, acceleration: 150 mm/s2, reaction: 10 ms, step: 0.005 mm, home order: 1 }
`;

/** The machine behind the file: here the two agree, until a fault is planted. */
export const scenario: MachineTruth = {
  inputs: [
    limit('x-home', 'P1', { axis: 'X', end: 'negative', actuates: -3, frees: -2.6 }),
    limit('x-far', 'P1', { axis: 'X', end: 'positive', actuates: 609, frees: 608.6 }),
    limit('y-home', 'P1', { axis: 'Y', end: 'negative', actuates: -3, frees: -2.6 }),
    limit('y-far', 'P2', { axis: 'Y', end: 'positive', actuates: 439, frees: 438.6 }),
    limit('z-home', 'P2', { axis: 'Z', end: 'positive', actuates: 3, frees: 2.7 }),
    input('probe', 'P3', [closed('probe')]),
    input('stop', 'P4', [{ ...closed('stop'), stop: true }]),
    input('doors', 'P4', [closed('doors/flap'), closed('doors/hatch')]),
  ],
  axes: [
    plainAxis({ letter: 'X', stops: [-12, 618], stands: 231.4, homeInputs: ['x-home'], soft: [0, 606] }),
    plainAxis({ letter: 'Y', stops: [-12, 448], stands: 158.75, homeInputs: ['y-home'], soft: [0, 436] }),
    {
      ...plainAxis({ letter: 'Z', stops: [-94, 7], stands: -37.2, homeInputs: ['z-home'], soft: [-91, 0] }),
      homes: 'positive',
      homeOrder: 1,
      approach: 5,
      rapid: 20,
      acceleration: 150,
      step: 0.005,
    },
  ],
};

function input(name: string, connector: string, switches: readonly SwitchTruth[]): InputTruth {
  const joined = switches.length > 1 ? 'series' : 'single';
  return { name, connector, joined, setting: 'active when open', limit: false, switches };
}

function limit(name: string, connector: string, dog: Dog): InputTruth {
  return { ...input(name, connector, [{ ...closed(name), dog }]), limit: true };
}

function closed(subject: string): SwitchTruth {
  return { subject, contact: 'normally closed', stop: false };
}

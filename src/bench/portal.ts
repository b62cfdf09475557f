import { plainAxis } from './plain-axis.ts';
import type { Dog, InputTruth, MachineTruth, SwitchTruth } from './truth.ts';

/** The machine file of the portal, as a careful owner would have written it. */
export const portalFile = `# A portal with a turning clamp for round posts: two motors carry its beam, some inputs are shared.
machine: Dunlin post carver
units: mm
stand: at the open end of the portal, where the posts are laid in
polarity: each
inputs:
  x-ends:
    joined: series
    polarity: active when open
    terminal: "1"
    connector: K1
    voltage: 5 V
    reach: by hand
    switches:
      low: { axis: X, end: negative, side: left, duty: [home, limit], contact: normally closed, overtravel: 3 mm, place: left end of the beam }
      high: { axis: X, end: positive, side: right, duty: [limit], contact: normally closed, overtravel: 3 mm, place: right end of the beam }
  y-left:
    duty: [home, limit]
    axis: Y
    end: negative
    side: front
    place: front end of the left rail
    contact: normally closed
    polarity: active when open
    terminal: "2"
    connector: K1
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
    motor: 1
  y-right:
    duty: [home, limit]
    axis: Y
    end: negative
    side: front
    place: front end of the right rail
    contact: normally closed
    polarity: active when open
    terminal: "3"
    connector: K1
    voltage: 5 V
    reach: by hand
    overtravel: 3 mm
    motor: 2
  z-a-home:
    joined: series
    polarity: active when open
    terminal: "4"
    connector: K2
    voltage: 5 V
    reach: by hand
    switches:
      top: { axis: Z, end: positive, side: top, duty: [home, limit], contact: normally closed, place: top of the tool slide }
      index: { axis: A, end: positive, duty: [home], contact: normally closed, place: behind the turning clamp }
  stop:
    duty: [stop]
    place: red mushroom button on the left leg of the portal
    contact: normally closed
    polarity: active when open
    terminal: "5"
    connector: K2
    voltage: 5 V
    reach: by hand
axes:
  X: { travel: 810 mm, homes: negative, positive: right, moves: tool, soft: [0, 806], hard: [-3, 809], home value: 0, back-off: 3 mm, approach speed: 900 mm/min, rapid: 3600 mm/min, acceleration: 300 mm/s2, reaction: 10 ms, step: 0.0125 mm, home order: 2 }
  Y: { travel: 1200 mm, homes: negative, positive: back, moves: tool, motors: 2, soft: [0, 1190], home value: 0, back-off: 3 mm, approach speed: 900 mm/min, rapid: 3600 mm/min, acceleration: 300 mm/s2, reaction: 10 ms, step: 0.0125 mm, home order: 2 }
  Z: { travel: 150 mm, homes: positive, positive: top, moves: tool, soft: [-145, 0], home value: 0, back-off: 3 mm, approach speed: 300 mm/min, rapid: 1200 mm/min, acceleration: 150 mm/s2, reaction: 10 ms, step: 0.005 mm, home order: 1 }
  A: { kind: rotary, homes: positive, home value: 0, back-off: 3, approach speed: 900 deg/min, rapid: 3600 deg/min, acceleration: 300 deg/s2, reaction: 10 ms, step: 0.01, home order: 3 }
`;

/** The machine behind that file: the two agree, until a fault is planted. */
export const portal: MachineTruth = {
  inputs: [
    {
      ...limit('x-ends', 'K1', [
        works('x-ends/low', { axis: 'X', end: 'negative', actuates: -3, frees: -2.6 }),
        works('x-ends/high', { axis: 'X', end: 'positive', actuates: 809, frees: 808.6 }),
      ]),
      joined: 'series',
    },
    limit('y-left', 'K1', [
      works('y-left', { axis: 'Y', end: 'negative', actuates: -3, frees: -2.6, side: 0 }),
    ]),
    limit('y-right', 'K1', [
      // Nobody screws two switches on to the tenth: the sides trip this far apart on a square beam.
      works('y-right', { axis: 'Y', end: 'negative', actuates: -3.3, frees: -2.9, side: 1 }),
    ]),
    {
      ...limit('z-a-home', 'K2', [
        works('z-a-home/top', { axis: 'Z', end: 'positive', actuates: 3, frees: 2.7 }),
        works('z-a-home/index', { axis: 'A', end: 'positive', actuates: 3, frees: 2.5, length: 8 }),
      ]),
      joined: 'series',
    },
    { ...limit('stop', 'K2', [{ subject: 'stop', contact: 'normally closed', stop: true }]), limit: false },
  ],
  axes: [
    plainAxis({ letter: 'X', stops: [-12, 818], stands: 402.6, homeInputs: ['x-ends'], soft: [0, 806] }),
    {
      ...plainAxis({
        letter: 'Y',
        stops: [-12, 1210],
        stands: 233.1,
        homeInputs: ['y-left', 'y-right'],
        soft: [0, 1190],
      }),
      motors: 2,
    },
    {
      ...plainAxis({
        letter: 'Z',
        stops: [-150, 7],
        stands: -41.3,
        homeInputs: ['z-a-home'],
        soft: [-145, 0],
      }),
      homes: 'positive',
      homeOrder: 1,
      approach: 5,
      rapid: 20,
      acceleration: 150,
      step: 0.005,
    },
    {
      ...plainAxis({
        letter: 'A',
        stops: [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
        stands: 74.2,
        homeInputs: ['z-a-home'],
        soft: [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
      }),
      turns: true,
      homes: 'positive',
      homeOrder: 3,
      step: 0.01,
    },
  ],
};

function limit(name: string, connector: string, switches: readonly SwitchTruth[]): InputTruth {
  return { name, connector, joined: 'single', setting: 'active when open', limit: true, switches };
}

function works(subject: string, dog: Dog): SwitchTruth {
  return { subject, contact: 'normally closed', stop: false, dog };
}

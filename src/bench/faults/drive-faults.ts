import type { Axis } from '../axis.ts';
import { homeDog, onAxis, onTwoAxes } from './axis-fault.ts';
import type { Fault } from './fault.ts';

/** Wrong by the difference between a screw of 5 mm and one of five turns an inch. */
const screwForScrew = 5.08 / 5;
/** A motor that is too weak loses so many mm, each time it is taken past this share of its approach speed. */
const losesByMm: readonly [number, number] = [0.3, 1.4];
const losesAbove = 0.7;

const turnRound = (axis: Axis): void => {
  for (const drive of axis.drives) drive.sense = drive.sense === 1 ? -1 : 1;
};

/** What can be wrong between the controller's pulses and the carriage. */
export const driveFaults = {
  'direction-inverted': onAxis(
    'its direction is set the wrong way round: commanded positive, it moves negative',
    turnRound,
  ),
  'leads-turned': onAxis(
    'the leads of one winding of its motor are exchanged: commanded positive, it moves negative',
    turnRound,
  ),
  'motors-crossed': onTwoAxes('the motor plugs of two axes are on each other’s drivers', (one, other) => {
    [one.drives, other.drives] = [other.drives, one.drives];
  }),
  'driver-off': onAxis('its driver has no power: the count goes on, the axis stands still', (axis) => {
    for (const drive of axis.drives) drive.state = 'dead';
  }),
  uncoupled: onAxis(
    'the coupling between its motor and its screw is open: the motor turns, the axis stands still',
    (axis) => {
      for (const drive of axis.drives) drive.isCoupled = false;
    },
  ),
  'winding-open': onAxis('one winding of its motor is open: it buzzes and does not turn', (axis) => {
    for (const drive of axis.drives) drive.state = 'buzzes';
  }),
  'loses-steps': onAxis(
    'its motor is too weak for its approach speed and loses steps each time',
    (axis, world) => {
      const random = world.random(`lost steps ${axis.letter}`);
      const above = axis.homing.approach * losesAbove;
      for (const drive of axis.drives) drive.loses = { above, by: losesByMm, random };
    },
  ),
  'turns-one-way': onAxis(
    'the direction line of its driver is open: whichever way it is sent, it moves towards its home end',
    (axis) => {
      const { outwards } = homeDog(axis);
      for (const drive of axis.drives) drive.oneWay = outwards;
    },
  ),
  'scale-off': onAxis(
    'its steps for a millimetre are set for another screw: it moves 1.6 % too far',
    (axis) => {
      for (const drive of axis.drives) drive.scale = screwForScrew;
    },
  ),
  backlash: onAxis('its nut is worn: 0.3 mm of play at each reversal', (axis) => {
    for (const drive of axis.drives) drive.play = 0.3;
  }),
  'blocked-halfway': onAxis('something lies in its way half-way to its home switch', (axis) => {
    const { actuates, outwards } = homeDog(axis);
    const at = (axis.stands + actuates) / 2;
    const [low, high] = axis.carriage.stops;
    axis.carriage.stops = outwards === 1 ? [low, at] : [at, high];
  }),
  sags: onAxis('its brake lets go before its motor holds: it drops 0.6 mm as it sets off', (axis, world) => {
    world.quirks.beforeMotion.push((moved) => {
      if (moved !== axis) return;
      axis.moveTo(axis.stands - 0.6);
      axis.carriage.sighting.sagged = true;
    });
  }),
} satisfies Record<string, Fault>;

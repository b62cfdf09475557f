import { ToolError } from '../../model/tool-error.ts';
import { Dog } from '../dog.ts';
import { homeDog, onAxis, spanOf } from './axis-fault.ts';
import { type Fault, onController } from './fault.ts';

/** The share of the way from trip to metal that too soft a ramp takes to stop. */
const usesUp = 0.6;

/** What can be wrong with how the controller is set to home. */
export const homingFaults = {
  'home-end-wrong': onAxis(
    'it is set to seek the other end than the one its switch stands at',
    ({ homing }) => {
      homing.towards = homing.towards === 1 ? -1 : 1;
    },
  ),
  mirrored: onAxis(
    'both its direction and the end it seeks are set the wrong way round: homing works, parts come out mirrored',
    ({ homing, drives }) => {
      homing.towards = homing.towards === 1 ? -1 : 1;
      for (const drive of drives) drive.sense = drive.sense === 1 ? -1 : 1;
    },
  ),
  'zeroed-in-place': onAxis(
    'it is set up without a home switch: its zero is set where it stands',
    ({ homing }) => {
      homing.manner = 'in place';
    },
  ),
  'stays-on-switch': onAxis('its homing ends in a fault at the trip, without turning back', ({ homing }) => {
    homing.turnsBack = false;
  }),
  'switch-not-heeded': onAxis('its home switch is reported and not acted on: it pushes on', ({ homing }) => {
    homing.heedsSwitch = false;
  }),
  'back-off-short': onAxis('it backs off by less than its switch needs to let go', (axis) => {
    const { actuates, frees } = homeDog(axis);
    axis.homing.backOff = Math.abs(actuates - frees) / 2;
  }),
  'back-off-long': onAxis('it backs off as far as its other end', (axis) => {
    axis.homing.backOff = spanOf(axis) - 5;
  }),
  'seek-short': onAxis('it gives up its seek after a quarter of its travel', (axis) => {
    axis.homing.farthest = spanOf(axis) / 4;
  }),
  crawls: onAxis('its approach is set twenty times too slow', ({ homing }) => {
    homing.approach /= 20;
  }),
  'brakes-late': onAxis('its ramp is so soft that it stops far behind its switch', (axis) => {
    const { actuates, outwards } = homeDog(axis);
    const metal = axis.truth.stops[outwards === 1 ? 1 : 0];
    axis.acceleration = axis.homing.approach ** 2 / (2 * usesUp * Math.abs(metal - actuates));
  }),
  'zero-not-set': onAxis('homed, it does not set its zero', ({ homing }) => {
    homing.setsZero = false;
  }),
  'spindle-last': onController('Z homes last instead of first', ({ axes }) => {
    for (const { letter, homing } of axes) if (letter === 'Z') homing.homeOrder = 99;
  }),
  'touches-work': onAxis('its homing is a touch of the work with the probe', (axis, world) => {
    const contact = world.contacts.find(({ input }) => input === 'probe');
    if (axis.letter !== 'Z' || !contact)
      throw new ToolError('wrong-usage', 'Only Z touches with a probe.', 'Write touches-work:Z.');
    const plate = (axis.stands + axis.truth.stops[0]) / 2;
    axis.carriage.dogs.push(
      new Dog(contact, { axis: 'Z', end: 'negative', actuates: plate, frees: plate + 0.1 }),
    );
    axis.homing.inputs = [contact.input];
    axis.homing.towards = -1;
  }),
  'shorter-way': {
    ...onAxis('it turns to its switch by the shorter way, and so meets it from either side', ({ homing }) => {
      homing.shorterWay = true;
    }),
    needs: 'portal',
  },
} satisfies Record<string, Fault>;

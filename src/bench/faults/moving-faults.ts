import { ms } from '../../model/units.ts';
import { onAxis, onSecondMotor } from './axis-fault.ts';
import { type Fault, onController, onInput } from './fault.ts';

/** Noise of the motors opens a line for as long as this, as often as this while they turn; ms. */
const noiseLasts: readonly [number, number] = [6, 14];
const noiseEvery: readonly [number, number] = [900, 4500];

/** What the controller and its surroundings do wrong while the machine moves. */
export const movingFaults = {
  'noise-while-moving': onInput(
    'the noise of the motors opens its line for moments while one turns',
    (world, { line }) => {
      const random = world.random(`noise ${line.truth.name}`);
      world.whileOn(() => {
        line.loose = !line.loose && world.motion.underWay;
        world.refresh();
        return ms(random.within(...(line.loose ? noiseLasts : noiseEvery)));
      });
    },
  ),
  'trips-untold': onInput(
    'while it homes the controller acts on this input and does not report it',
    (world, { stage }) => {
      stage.isUntold = () => world.controller.activity === 'homing';
    },
  ),
  'silent-while-homing': onController('no reports while it homes', ({ controller }) => {
    controller.silentWhileHoming = true;
  }),
  'limits-only-reported': onController(
    'a limit tripped in a move is reported and not acted on',
    ({ quirks }) => {
      quirks.heedsLimits = false;
    },
  ),
  'refuses-at-limit': onController('with any limit active nothing is started', ({ quirks }) => {
    quirks.refusesAtLimit = true;
  }),
  'soft-limits-outside': onAxis('its soft limits lie outside its switches', (axis) => {
    const [low, high] = axis.truth.stops;
    axis.soft = [low - 10, high + 10];
  }),
  'restarts-after-homing': onController(
    'the first move of an axis that was homed makes the supply dip: the controller restarts and its count is lost',
    (world) => {
      let once = true;
      world.quirks.beforeMotion.push(({ isHomed }) => {
        if (!isHomed || !once) return;
        once = false;
        world.time.after(ms(250), () => world.restart());
      });
    },
  ),
} satisfies Record<string, Fault>;

/** What can be wrong with a beam that two motors drive. */
export const beamFaults = {
  'side-reversed': onSecondMotor('its second motor turns against the first: the beam racks', ({ drives }) => {
    const [, second] = drives;
    if (second) second.sense = second.sense === 1 ? -1 : 1;
  }),
  'side-off': onSecondMotor(
    'the driver of its second motor is off: the first drags that side along',
    ({ drives }) => {
      const [, second] = drives;
      if (second) second.state = 'dead';
    },
  ),
  'side-ahead': onSecondMotor('its second side stands 5 mm ahead of the first', ({ carriage }) =>
    carriage.rack(5),
  ),
  'side-loses-steps': onSecondMotor(
    'its second motor loses steps each time it is taken to speed',
    (axis, world) => {
      const [, second] = axis.drives;
      const random = world.random(`lost steps ${axis.letter} second`);
      if (second) second.loses = { above: axis.homing.approach * 0.7, by: [0.3, 1.4], random };
    },
  ),
} satisfies Record<string, Fault>;

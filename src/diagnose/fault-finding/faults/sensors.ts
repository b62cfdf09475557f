import type { FaultName } from '../../../model/fault-names.ts';
import { idealityFor } from '../../circuit/network.ts';
import { highestLogic } from '../../circuit/parts/rails.ts';
import { npn, pnp } from '../../circuit/parts/sensors.ts';
import { leaks, opens, plus, withElement, withOhms, without, withVolts } from '../effects.ts';
import type { Effect, Entry } from '../fault.ts';
import { atTerminal, loopCurrent, pressing, supplyAtSensor, volts, whenClosed, whenOpen } from '../proofs.ts';
import {
  both,
  coupler,
  either,
  groundSwitching,
  logicStage,
  module,
  npnSensor,
  pnpSensor,
  supplySwitching,
  threeWire,
  twoWire,
} from '../traits.ts';

/** Another sensor in the same place: its output goes, the other kind's comes. */
const swapped =
  (output: typeof npn): Effect =>
  (rig, { world }) =>
    plus(without(rig, 'sensor draw', 'output drop', 'contact', 'load'), ...output(world.numbers));

/** Below and above what the sensor needs to work, V, for 24 V and for 5 V. */
const sagging = {
  little: { field: [7, 11], logic: [2.5, 4.6] },
  much: { field: [5, 9.5], logic: [2, 4.2] },
  always: { field: [5, 6], logic: [2, 2.4] },
} as const;

const sags =
  (how: keyof typeof sagging): Effect =>
  (rig, { world, state }) => {
    const [low, high] = sagging[how][world.numbers('supply') > highestLogic ? 'field' : 'logic'];
    // A steel rule flat on the face still works it; the machine's own target, further away, does so only now and then.
    const byHand = state.actuation === 'pressed by hand' || state.actuation === 'tapped';
    return (byHand ? [high] : [low, high]).map((each) => withVolts(rig, 'field supply', each));
  };

/** A way back through another sensor's resistor, there and gone. */
const feedsBack =
  (ohms: number): Effect =>
  (rig, { wiring: { template } }) => [
    rig,
    ...leaks(rig, 'cable signal', template.joins === '0 V' ? '0 V' : template.plus, ohms),
  ];

/** Largest drop and leakage that IEC 60947-5-2 allows a two-wire sensor, V and A. */
const largestDrop = 8;
const largestLeak = 1.5e-3;
const leaksThrough =
  (amps: number): Effect =>
  (rig, { world }) =>
    withOhms(rig, 'off-state leakage', world.numbers('supply') / amps);
/** A supply that leaves such a sensor's loop too little, V. */
const lowSupply = 10;

/** What goes wrong at sensors and their supplies. */
export const sensorFaults = {
  'sensor-supply-reversed': {
    applies: either(threeWire, module),
    alters: (rig) =>
      withElement(
        withElement(rig, 'supply clamp', (each) => ({ ...each, to: 'device common' })),
        'common clamp',
        (each) => ({ ...each, to: 'device supply' }),
      ),
    likelihood: { fresh: 15, worked: 2 },
    proof: supplyAtSensor,
  },
  'pnp-for-npn': {
    applies: both(npnSensor, groundSwitching),
    alters: swapped(pnp),
    likelihood: { fresh: 35, worked: 3 },
    proof: volts('device signal', 'device common', whenClosed),
  },
  'npn-for-pnp': {
    applies: both(pnpSensor, supplySwitching),
    alters: swapped(npn),
    likelihood: { fresh: 15, worked: 3 },
    proof: volts('device signal', 'device common', whenClosed),
  },
  'sensor-supply-missing': {
    applies: either(threeWire, module),
    alters: opens('supply core'),
    likelihood: { fresh: 25, worked: 25 },
    proof: supplyAtSensor,
  },
  'sensor-supply-low': {
    applies: either(threeWire, twoWire, module),
    alters: sags('little'),
    degrees: [sags('little'), sags('much'), sags('always')],
    likelihood: { fresh: 12, worked: 10 },
    proof: (wiring) => (twoWire(wiring) ? volts('field +', 'field 0 V')(wiring) : supplyAtSensor(wiring)),
  },
  'returns-not-joined': {
    applies: logicStage,
    alters: opens('returns joined'),
    likelihood: { fresh: 20, worked: 2 },
    proof: () => ({ by: 'ohms', from: 'field 0 V', to: '0 V', undone: 'at controller', state: pressing() }),
  },
  'wrong-field-voltage': {
    applies: either(coupler, threeWire),
    alters: (rig, { world }) => withVolts(rig, 'field supply', world.numbers('supply') > 15 ? 5 : 24),
    likelihood: { fresh: 12, worked: 3 },
    proof: volts('field +', 'field 0 V'),
  },
  'leakage-holds-on': {
    applies: twoWire,
    alters: leaksThrough(largestLeak),
    degrees: [leaksThrough(0.6 * largestLeak), leaksThrough(largestLeak), leaksThrough(1.6 * largestLeak)],
    likelihood: { fresh: 8, worked: 2 },
    proof: loopCurrent(whenOpen),
  },
  'drop-too-big': {
    applies: twoWire,
    alters: (rig) =>
      withElement(withVolts(rig, 'field supply', lowSupply), 'output drop', (each) =>
        each.kind === 'diode' ? { ...each, ideality: idealityFor(largestDrop, 0.01, each.saturation) } : each,
      ),
    likelihood: { fresh: 6, worked: 2 },
    proof: volts('device common', 'device signal', whenClosed),
  },
  'back-feed': {
    applies: either(coupler, threeWire, module),
    alters: feedsBack(4700),
    degrees: [feedsBack(3e3), feedsBack(7e3)],
    likelihood: { fresh: 4, worked: 3 },
    proof: atTerminal(whenOpen),
  },
} satisfies Partial<Record<FaultName, Entry>>;

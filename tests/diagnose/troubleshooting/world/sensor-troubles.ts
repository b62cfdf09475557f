import { idealityFor } from '../../../../src/diagnose/circuit/network.ts';
import { npn, pnp } from '../../../../src/diagnose/circuit/parts/sensors.ts';
import { byDecades, evenly, happens } from './draws.ts';
import { add, alter, bridge, remove, setOhms, setVolts } from './input.ts';
import type { Trouble } from './trouble.ts';

/** The other kind of output in the same place. */
const otherKind = (output: typeof npn): Trouble => ({
  part: 'sensor',
  plays: (input, { machine }) => {
    remove(input, 'sensor draw', 'output drop', 'contact', 'load');
    add(input, ...output(machine.board.numbers));
  },
});

/** Sensors, what feeds them, and what they feed. */
export const sensorTroubles = {
  'sensor-supply-reversed': {
    part: 'sensor supply',
    plays: (input) => {
      alter(input, 'supply clamp', (part) => ({ ...part, to: 'device common' }));
      alter(input, 'common clamp', (part) => ({ ...part, to: 'device supply' }));
    },
  },
  'pnp-for-npn': otherKind(pnp),
  'npn-for-pnp': otherKind(npn),
  'sensor-supply-missing': { part: 'sensor supply', plays: (input) => remove(input, 'supply core') },
  'sensor-supply-low': {
    part: 'field supply',
    // Enough for a steel rule flat on the face; the machine's own target, further away, is seen now and then.
    plays: (input, { machine, state, lasting, now }) => {
      const high = machine.board.numbers('supply') > 5.5;
      const volts = high ? evenly(lasting, 10, 12) : evenly(lasting, 4.5, 4.7);
      const sags = state.actuation !== 'pressed by hand' && state.actuation !== 'tapped' && happens(now, 0.5);
      setVolts(input, 'field supply', sags ? volts * evenly(now, 0.55, 0.75) : volts);
    },
  },
  'returns-not-joined': { part: 'returns', plays: (input) => remove(input, 'returns joined') },
  'wrong-field-voltage': {
    part: 'field supply',
    plays: (input, { machine, lasting }) =>
      setVolts(
        input,
        'field supply',
        (machine.board.numbers('supply') > 15 ? 5 : 24) * evenly(lasting, 0.95, 1.05),
      ),
  },
  'leakage-holds-on': {
    part: 'sensor',
    plays: (input, { machine, lasting }) =>
      setOhms(
        input,
        'off-state leakage',
        machine.board.numbers('supply') / byDecades(lasting, 1.2e-3, 2.5e-3),
      ),
  },
  'drop-too-big': {
    part: 'field supply',
    plays: (input, { lasting }) => {
      setVolts(input, 'field supply', evenly(lasting, 9, 11));
      const volts = evenly(lasting, 6.5, 8);
      alter(input, 'output drop', (part) =>
        part.kind === 'diode' ? { ...part, ideality: idealityFor(volts, 0.01, part.saturation) } : part,
      );
    },
  },
  'back-feed': {
    part: 'back feed',
    plays: (input, { machine, lasting, now }) => {
      const { joins, plus } = machine.wiring.template;
      const ohms = byDecades(lasting, 2.5e3, 8e3);
      if (happens(now, 0.5)) bridge(input, 'cable signal', joins === '0 V' ? '0 V' : plus, ohms);
    },
  },
} as const satisfies Readonly<Record<string, Trouble>>;

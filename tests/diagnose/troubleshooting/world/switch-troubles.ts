import type { State } from '../../../../src/diagnose/circuit/state.ts';
import { byDecades, evenly, happens } from './draws.ts';
import { add, bridge, couple, remove, setFarads, setOhms } from './input.ts';
import type { Moment, Trouble } from './trouble.ts';

const contactStays = (conducting: boolean): Trouble => ({
  part: 'contact',
  plays: (input) => {
    input.conducts = () => conducting;
  },
});

const byMachine = ({ state }: Moment) => state.actuation === 'pressed by machine';

const misses = (share: number, part: string): Trouble => ({
  part,
  plays: (input, moment) => {
    if (byMachine(moment) && happens(moment.now, share)) input.worked = false;
  },
});

const staysWorked: Trouble = {
  part: 'actuator',
  plays: (input) => {
    input.worked = true;
  },
};

/** Bursts that come while something runs, either way and not all the time. */
const noise = (...running: readonly State['running'][]): Trouble => ({
  part: 'disturbance',
  plays: (input, { state, lasting, now }) => {
    const volts = evenly(lasting, 45, 90);
    if (!running.includes(state.running)) return;
    if (happens(now, 0.65)) couple(input, volts * evenly(now, 0.7, 1) * (happens(now, 0.5) ? 1 : -1));
  },
});

const inverted: Trouble = {
  part: 'polarity',
  plays: (input) => {
    input.inverted = true;
  },
};
const unseen = (part: string): Trouble => ({ part });

/** Contacts, what works them, settings, and what comes in from the machine. */
export const switchTroubles = {
  'contact-welded': contactStays(true),
  'contact-filmed': {
    part: 'contact',
    plays: (input, { now }) => setOhms(input, 'contact', byDecades(now, 50, 300e3)),
  },
  'contact-never-makes': contactStays(false),
  'common-blade-unused': contactStays(false),
  'wrong-blade': {
    part: 'contact',
    plays: (input) => {
      const right = input.conducts;
      input.conducts = (worked) => !right(worked);
    },
  },
  'contact-bridged': {
    part: 'contact',
    plays: (input, { lasting, now }) => {
      const ohms = byDecades(lasting, 1e3, 40e3) * byDecades(now, 0.3, 3);
      bridge(input, 'device signal', 'device common', ohms);
    },
  },
  'one-leg-open': { part: 'contact', plays: (input) => remove(input, 'leg 1') },
  'one-contact-bypassed': contactStays(true),
  'contact-block-off': contactStays(true),
  'clip-off': contactStays(false),
  'plate-bonded': {
    part: 'contact',
    plays: (input, { lasting }) => bridge(input, 'device signal', '0 V', byDecades(lasting, 0.2, 5)),
  },
  'dog-misses': misses(1, 'dog'),
  'dog-rides-past': misses(0.5, 'dog'),
  'gap-too-large': misses(1, 'dog'),
  'held-operated': staysWorked,
  'chip-on-face': staysWorked,
  'actuator-sticks': {
    part: 'actuator',
    plays: (input, { state }) => {
      if (state.actuation === 'let go') input.worked = true;
    },
  },
  'magnet-wrong': {
    part: 'actuator',
    plays: (input) => {
      input.worked = false;
    },
  },
  'optics-blind': {
    part: 'actuator',
    plays: (input, { lasting, now }) => {
      if (happens(now, evenly(lasting, 0.4, 0.7))) input.worked = true;
    },
  },
  'bracket-loose': unseen('bracket'),
  'shared-input-misread': unseen('sharing'),
  'stop-is-status-only': unseen('stop'),
  'spindle-noise': noise('spindle'),
  'motor-cable-noise': noise('axis'),
  'shield-wrong': noise('spindle', 'axis'),
  'shared-return': {
    part: 'returns',
    plays: (input, { state, lasting, now }) => {
      const lift = evenly(lasting, 1.6, 3);
      if (state.running === 'nothing') return;
      remove(input, 'returns joined');
      const volts = happens(now, 0.5) ? lift : 0.02;
      add(input, { kind: 'voltage', name: 'returns joined', from: 'field 0 V', to: '0 V', volts });
    },
  },
  'polarity-inverted': inverted,
  'polarity-for-all': inverted,
  'filter-too-long': {
    part: 'filter',
    plays: (input, { lasting }) => {
      input.filterMs = evenly(lasting, 60, 250);
    },
  },
  'filter-too-short': {
    part: 'filter',
    plays: (input) => {
      input.filterMs = 0;
      setFarads(input, 0);
    },
  },
  'input-not-enabled': {
    part: 'enabling',
    plays: (input) => {
      input.enabled = false;
    },
  },
} as const satisfies Readonly<Record<string, Trouble>>;

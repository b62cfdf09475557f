import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import { neighbourOf } from '../../../../src/diagnose/circuit/rig.ts';
import { byDecades, evenly, happens } from './draws.ts';
import { add, alter, bridge, couple, type Input, remove, setFarads, setOhms, turnRound } from './input.ts';
import type { Moment, Trouble } from './trouble.ts';

const cut = (part: string, ...names: readonly string[]): Trouble => ({
  part,
  plays: (input) => remove(input, ...names),
});

/** What touches, touches well: a supply that is linked onto a poorer short burns it clear. */
const shortOhms = (random: Random) => byDecades(random, 0.005, 0.05);

const short = (to: (moment: Moment) => string): Trouble => ({
  part: 'signal core',
  plays: (input, moment) => bridge(input, 'cable signal', to(moment), shortOhms(moment.lasting)),
});
const toGround = short(() => '0 V');
const toPlus = short(({ machine }) => machine.wiring.template.plus);

/** The signal core in the clamp of the input beside. */
function besideMoved(input: Input): void {
  alter(input, 'signal plug', (part) => ({ ...part, from: neighbourOf('terminal') }));
}
const crossed: Trouble = {
  part: 'terminal',
  beside: true,
  plays: (input) => {
    besideMoved(input);
    alter(input, neighbourOf('signal plug'), (part) => ({ ...part, from: 'terminal' }));
  },
};

/** Cores, plugs, clamps and the controller's own input. */
export const lineTroubles = {
  'signal-core-open': cut('signal core', 'signal core'),
  'common-core-open': cut('common core', 'common core'),
  'signal-to-0-v': toGround,
  'fed-signal-to-0-v': toGround,
  'signal-to-plus': toPlus,
  'fed-signal-to-plus': toPlus,
  'signals-together': {
    part: 'signal core',
    beside: true,
    plays: (input, { lasting }) =>
      bridge(input, 'cable signal', neighbourOf('cable signal'), shortOhms(lasting)),
  },
  'plug-half-mated': {
    part: 'signal plug',
    plays: (input, { lasting, now }) => {
      if (happens(now, evenly(lasting, 0.35, 0.65))) remove(input, 'signal plug');
      else setOhms(input, 'signal plug', byDecades(now, 0.05, 5));
    },
  },
  'loose-clamp': {
    part: 'signal core',
    plays: (input, { state, now }) => {
      if (state.handling === 'tugged' && happens(now, 0.5))
        setOhms(input, 'signal core', evenly(now, 0.5, 3));
      else remove(input, 'signal core');
    },
  },
  'wrong-terminal': {
    part: 'terminal',
    beside: true,
    // Beside its own clamp there is the neighbour's, or one that nothing is reported of.
    plays: (input, { lasting }) => {
      if (happens(lasting, 0.3)) remove(input, 'signal plug');
      else {
        besideMoved(input);
        remove(input, neighbourOf('signal plug'));
      }
    },
  },
  'inputs-crossed': crossed,
  'ends-swapped': crossed,
  'plug-shifted': {
    part: 'terminal',
    beside: true,
    plays: (input) => {
      besideMoved(input);
      remove(input, neighbourOf('signal plug'));
    },
  },
  moisture: {
    part: 'signal core',
    plays: (input, { machine, lasting, now }) => {
      const { joins, plus } = machine.wiring.template;
      const ohms = byDecades(lasting, 4e3, 120e3) * byDecades(now, 0.5, 2);
      bridge(input, 'cable signal', joins === '0 V' ? '0 V' : plus, ohms);
    },
  },
  'core-breaks-when-flexed': {
    part: 'signal core',
    plays: (input, { state, lasting, now }) => {
      const bent = state.handling === 'cable flexed' || state.running === 'axis';
      if (bent && happens(now, evenly(lasting, 0.3, 0.7))) remove(input, 'signal core');
    },
  },
  'pull-resistor-missing': cut('pull resistor', 'pull-up', 'pull-down', 'divider'),
  'pull-resistor-weak': {
    part: 'pull resistor',
    plays: (input, { state, lasting, now }) => {
      setOhms(input, 'pull-up', byDecades(lasting, 30e3, 80e3));
      const volts = evenly(lasting, 8, 20);
      if (state.running === 'axis' || state.running === 'spindle') couple(input, volts * evenly(now, -1, 1));
    },
  },
  'coupler-light-open': cut('light', 'light'),
  'coupler-output-shorted': {
    part: 'coupler output',
    plays: (input, { lasting }) => {
      remove(input, 'output');
      add(input, { kind: 'resistor', name: 'output', from: 'pin', to: '0 V', ohms: evenly(lasting, 5, 300) });
    },
  },
  'coupler-reversed': { part: 'light', plays: (input) => turnRound(input, 'light') },
  'coupler-common-missing': cut('coupler common', 'common strap'),
  'filter-wrong-value': {
    part: 'filter',
    plays: (input, { lasting }) => setFarads(input, byDecades(lasting, 5e-6, 47e-6)),
  },
  'pin-dead-open': {
    part: 'pin',
    plays: (input) => {
      input.stuck = 'open';
    },
  },
  'pin-dead-conducting': {
    part: 'pin',
    plays: (input) => {
      input.stuck = 'conducting';
    },
  },
} as const satisfies Readonly<Record<string, Trouble>>;

import type { FaultName } from '../../../model/fault-names.ts';
import { state } from '../../circuit/state.ts';
import { opens, picksUp, withElement, withFarads, withOhms } from '../effects.ts';
import type { Entry } from '../fault.ts';
import {
  atTerminal,
  looking,
  loopCurrent,
  onBoard,
  unplugged,
  volts,
  whenClosed,
  whenOpen,
} from '../proofs.ts';
import { both, coupler, everywhere, logicStage, not, parallel, pulled } from '../traits.ts';

/** Inside chips a pull-up can be as weak as this, ohm (common practice, no source). */
const weakOhms = 47e3;
/** What a long cable brings in whenever something runs, V behind the coupling (common practice, no source). */
const hum = 10;
/** A filter a hundred times too large, F. */
const hugeFilter = 10e-6;

/** What goes wrong on the controller's side of the terminal. */
export const boardFaults = {
  'pull-resistor-missing': {
    applies: logicStage,
    alters: opens('pull-up', 'pull-down', 'divider'),
    likelihood: { fresh: 15, worked: 1 },
    proof: atTerminal(unplugged),
  },
  'pull-resistor-weak': {
    applies: both(pulled, ({ template }) => template.joins === '0 V'),
    alters: (rig, scene) => picksUp(hum, 'axis', 'spindle')(withOhms(rig, 'pull-up', weakOhms), scene),
    likelihood: { fresh: 12, worked: 6 },
    proof: onBoard('logic +', 'terminal'),
  },
  'coupler-light-open': {
    applies: coupler,
    alters: opens('light'),
    likelihood: { fresh: 6, worked: 15 },
    proof: loopCurrent(whenClosed),
  },
  'coupler-output-shorted': {
    applies: coupler,
    alters: (rig) =>
      withElement(rig, 'output', (each) => (each.kind === 'switch' ? { ...each, when: [] } : each)),
    likelihood: { fresh: 1, worked: 4 },
    proof: loopCurrent(whenOpen),
  },
  'coupler-reversed': {
    applies: coupler,
    alters: (rig) => withElement(rig, 'light', (each) => ({ ...each, from: each.to, to: each.from })),
    likelihood: { fresh: 25, worked: 1 },
    proof: loopCurrent(whenClosed),
  },
  'coupler-common-missing': {
    applies: coupler,
    alters: opens('common strap'),
    likelihood: { fresh: 30, worked: 6 },
    proof: (wiring) =>
      wiring.template.joins === '+'
        ? volts('field +', 'coupler common')(wiring)
        : volts('coupler common', 'field 0 V')(wiring),
  },
  'filter-wrong-value': {
    applies: both(logicStage, not(parallel)),
    alters: (rig) => withFarads(rig, hugeFilter),
    likelihood: { fresh: 5, worked: 1 },
    proof: looking,
  },
  'pin-dead-open': {
    applies: everywhere,
    alters: (rig) => ({ ...rig, pin: 'reads open' }),
    likelihood: { fresh: 6, worked: 20 },
    proof: atTerminal(whenClosed),
  },
  'pin-dead-conducting': {
    applies: everywhere,
    alters: (rig) => ({ ...rig, pin: 'reads conducting' }),
    likelihood: { fresh: 3, worked: 12 },
    proof: atTerminal(() => state({ plug: 'out at controller' })),
  },
} satisfies Partial<Record<FaultName, Entry>>;

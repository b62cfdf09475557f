import type { MeterDeed } from '../../../model/deed-names.ts';
import type { Bin } from '../../../model/outcomes.ts';
import type { State } from '../../circuit/state.ts';
import type { Wiring } from '../../circuit/wiring.ts';
import {
  coupler,
  dryContact,
  either,
  everywhere,
  module,
  pulled,
  type Trait,
  threeWire,
  twoWire,
} from '../../fault-finding/traits.ts';
import type { Imagined } from '../imagined.ts';
import { mixed, type Odds } from '../odds.ts';
import { binned, type Probe, readingsOf } from '../probe.ts';

const meter = <Name extends MeterDeed>(name: Name, minutes: number, applies: Trait, probe: Probe) =>
  ({
    name,
    kind: 'meter',
    minutes,
    mistaken: 0.02,
    applies,
    probe,
    odds: (scene: Imagined): Odds<Bin> => {
      const values = scene.once(name, () => readingsOf(probe, scene));
      return mixed(values.map((value) => [1 / values.length, binned(value, probe.limits)]));
    },
  }) as const;

/** Ohm: a good joint is below 10, a leak lies between, what is apart shows more than 1 Mohm. */
const ohmLimits = [10, 1e6] as const;
const shareLimits = [-0.2, 0.15, 0.5, 0.85] as const;
const closedWhen = ({ contact }: Wiring): Partial<State> =>
  contact === 'normally open' ? { actuation: 'pressed by hand' } : {};
const openWhen = ({ contact }: Wiring): Partial<State> =>
  contact === 'normally open' ? {} : { actuation: 'pressed by hand' };
const bothEnds = ['controller', 'switch'] as const;
const atRest = () => ({});

export const signalCoreOhms = meter('ohms-signal-core', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable signal', 'switch signal'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const commonCoreOhms = meter('ohms-common-core', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable common', 'switch common'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const signalToReturn = meter('ohms-signal-to-return', 5, everywhere, {
  quantity: 'resistance',
  between: () => ['cable signal', '0 V'],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const signalToPlus = meter('ohms-signal-to-plus', 5, everywhere, {
  quantity: 'resistance',
  between: ({ template }) => ['cable signal', template.plus],
  undone: bothEnds,
  state: atRest,
  limits: ohmLimits,
});
export const contactClosed = meter('ohms-contact-closed', 5, dryContact, {
  quantity: 'resistance',
  between: () => ['device signal', 'device common'],
  undone: ['switch'],
  state: closedWhen,
  limits: ohmLimits,
});
export const contactOpen = meter('ohms-contact-open', 5, dryContact, {
  quantity: 'resistance',
  between: () => ['device signal', 'device common'],
  undone: ['switch'],
  state: openWhen,
  limits: ohmLimits,
});
export const pullOhms = meter('ohms-pull', 5, pulled, {
  quantity: 'resistance',
  between: ({ template }) => ['terminal', template.joins === '0 V' ? 'logic +' : '0 V'],
  undone: ['controller'],
  state: atRest,
  limits: [10, 25e3, 1e6],
});
export const terminalClosed = meter('volts-terminal-closed', 3, everywhere, {
  quantity: 'voltage',
  between: () => ['terminal', '0 V'],
  undone: [],
  state: closedWhen,
  limits: shareLimits,
});
export const terminalOpen = meter('volts-terminal-open', 3, everywhere, {
  quantity: 'voltage',
  between: () => ['terminal', '0 V'],
  undone: [],
  state: openWhen,
  limits: shareLimits,
});
export const sensorSupply = meter('volts-sensor-supply', 3, either(threeWire, module), {
  quantity: 'voltage',
  between: () => ['device supply', 'device common'],
  undone: [],
  state: atRest,
  limits: [-0.2, 0.15, 0.6, 1.3],
});
export const sensorOutput = meter('volts-sensor-output', 3, either(threeWire, twoWire), {
  quantity: 'voltage',
  between: () => ['device signal', 'device common'],
  undone: [],
  state: closedWhen,
  limits: shareLimits,
});
export const returnsApart = meter('ohms-returns', 5, either(pulled, threeWire), {
  quantity: 'resistance',
  between: () => ['field 0 V', '0 V'],
  undone: ['controller'],
  state: atRest,
  limits: ohmLimits,
});
export const couplerCommon = meter('volts-coupler-common', 3, coupler, {
  quantity: 'voltage',
  between: () => ['coupler common', 'field 0 V'],
  undone: [],
  state: atRest,
  limits: shareLimits,
});
export const loopClosed = meter('amps-closed', 5, coupler, {
  quantity: 'current',
  between: () => ['signal plug', 'signal plug'],
  undone: [],
  state: closedWhen,
  limits: [2e-4, 2e-3, 2e-2],
});
export const loopOpen = meter('amps-open', 5, coupler, {
  quantity: 'current',
  between: () => ['signal plug', 'signal plug'],
  undone: [],
  state: openWhen,
  limits: [2e-4, 1e-3, 2e-3],
});

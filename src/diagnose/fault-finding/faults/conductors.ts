import type { FaultName } from '../../../model/fault-names.ts';
import {
  landsBeside,
  leaks,
  opens,
  shorts,
  touchingNeighbour,
  wanders,
  withOhms,
  without,
} from '../effects.ts';
import type { Effect, Entry } from '../fault.ts';
import { alongCore, atTerminal, fromSignalTo, pressing, whenClosed } from '../proofs.ts';
import {
  both,
  either,
  everywhere,
  groundSwitching,
  module,
  not,
  supplySwitching,
  touch,
  worked,
} from '../traits.ts';

/** From the signal core to where it does harm. */
const leak =
  (...ohms: readonly number[]): Effect =>
  (rig, { wiring: { template } }) =>
    leaks(rig, 'cable signal', template.joins === '0 V' ? '0 V' : template.plus, ...ohms);

/** What goes wrong between the two ends: cores, plugs, terminals. */
export const conductorFaults = {
  'signal-core-open': {
    applies: everywhere,
    alters: opens('signal core'),
    likelihood: { fresh: 60, worked: 60 },
    proof: alongCore('signal'),
  },
  'common-core-open': {
    applies: everywhere,
    alters: opens('common core'),
    likelihood: { fresh: 40, worked: 40 },
    proof: alongCore('common'),
  },
  'signal-to-0-v': {
    applies: groundSwitching,
    alters: (rig) => shorts(rig, 'cable signal', '0 V'),
    likelihood: { fresh: 20, worked: 30 },
    proof: fromSignalTo(() => '0 V'),
  },
  'fed-signal-to-0-v': {
    applies: supplySwitching,
    alters: (rig) => shorts(rig, 'cable signal', '0 V'),
    likelihood: { fresh: 8, worked: 10 },
    proof: fromSignalTo(() => '0 V'),
  },
  'signal-to-plus': {
    applies: groundSwitching,
    alters: (rig, { wiring }) => shorts(rig, 'cable signal', wiring.template.plus),
    likelihood: { fresh: 6, worked: 4 },
    proof: fromSignalTo(({ template }) => template.plus),
  },
  'fed-signal-to-plus': {
    applies: supplySwitching,
    alters: (rig, { wiring }) => shorts(rig, 'cable signal', wiring.template.plus),
    likelihood: { fresh: 4, worked: 4 },
    proof: fromSignalTo(({ template }) => template.plus),
  },
  'signals-together': {
    applies: not(either(module, touch)),
    alters: touchingNeighbour,
    likelihood: { fresh: 10, worked: 8 },
    proof: fromSignalTo(() => 'neighbour cable signal'),
  },
  'plug-half-mated': {
    applies: everywhere,
    alters: wanders('signal plug', 0.1, Number.POSITIVE_INFINITY),
    likelihood: { fresh: 25, worked: 55 },
    proof: () => ({
      by: 'ohms',
      from: 'terminal',
      to: 'switch signal',
      undone: 'at switch',
      state: pressing(),
    }),
  },
  'loose-clamp': {
    applies: everywhere,
    alters: (rig, { state }) => {
      const open = without(rig, 'signal core');
      return state.handling === 'tugged' ? [open, withOhms(rig, 'signal core', 1)] : open;
    },
    likelihood: { fresh: 45, worked: 45 },
    proof: alongCore('signal', { handling: 'tugged' }),
  },
  'wrong-terminal': {
    applies: everywhere,
    alters: landsBeside('hangs free'),
    degrees: [landsBeside('hangs free'), opens('signal plug')],
    likelihood: { fresh: 60, worked: 3 },
    proof: atTerminal(whenClosed),
  },
  'inputs-crossed': {
    applies: everywhere,
    alters: landsBeside('comes here'),
    likelihood: { fresh: 55, worked: 4 },
    proof: atTerminal(pressing),
  },
  'plug-shifted': {
    applies: everywhere,
    alters: landsBeside('hangs free'),
    likelihood: { fresh: 20, worked: 1 },
    proof: atTerminal(whenClosed),
  },
  'ends-swapped': {
    applies: both(worked, ({ template }) => template.joined === 'single'),
    alters: landsBeside('comes here'),
    likelihood: { fresh: 15, worked: 1 },
    proof: atTerminal(pressing),
  },
  moisture: {
    applies: everywhere,
    alters: leak(5e3, 20e3, 100e3),
    degrees: [leak(2e3, 4e3), leak(5e3, 10e3), leak(15e3, 40e3), leak(80e3, 250e3)],
    likelihood: { fresh: 1, worked: 25 },
    proof: fromSignalTo(({ template }) => (template.joins === '0 V' ? '0 V' : template.plus)),
  },
  'core-breaks-when-flexed': {
    applies: everywhere,
    alters: (rig, { state }) =>
      state.handling === 'cable flexed' || state.running === 'axis'
        ? [rig, without(rig, 'signal core')]
        : rig,
    likelihood: { fresh: 3, worked: 90 },
    proof: alongCore('signal', { handling: 'cable flexed' }),
  },
} satisfies Partial<Record<FaultName, Entry>>;

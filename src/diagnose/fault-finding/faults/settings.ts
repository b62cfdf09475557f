import type { FaultName } from '../../../model/fault-names.ts';
import { nothingElectrical, told, withFarads } from '../effects.ts';
import type { Entry } from '../fault.ts';
import { atTerminal, looking, pressing } from '../proofs.ts';
import { either, everywhere, parallel, series, stopButton } from '../traits.ts';

/** Longer than a tap, ms. */
const tooLong = 80;

/** What is told to the controller wrongly, or misunderstood by people. */
export const settingFaults = {
  'polarity-inverted': {
    applies: everywhere,
    alters: told({ inverted: true }),
    likelihood: { fresh: 90, worked: 6 },
    proof: looking,
  },
  'polarity-for-all': {
    applies: everywhere,
    alters: told({ inverted: true }),
    likelihood: { fresh: 20, worked: 2 },
    proof: looking,
  },
  'filter-too-long': {
    applies: everywhere,
    alters: told({ filterMs: tooLong }),
    likelihood: { fresh: 6, worked: 2 },
    proof: looking,
  },
  'filter-too-short': {
    applies: everywhere,
    alters: (rig, scene) => told({ filterMs: 0 })(withFarads(rig, 0), scene),
    likelihood: { fresh: 15, worked: 3 },
    proof: looking,
  },
  'input-not-enabled': {
    applies: everywhere,
    alters: told({ enabled: false }),
    likelihood: { fresh: 35, worked: 10 },
    proof: atTerminal(pressing),
  },
  'shared-input-misread': {
    applies: either(series, parallel),
    alters: nothingElectrical,
    likelihood: { fresh: 20, worked: 2 },
    proof: looking,
    beyond: 'one-bit-for-many',
  },
  'stop-is-status-only': {
    applies: stopButton,
    alters: nothingElectrical,
    likelihood: { fresh: 15, worked: 1 },
    proof: looking,
    beyond: 'power-stays-on',
  },
} satisfies Partial<Record<FaultName, Entry>>;

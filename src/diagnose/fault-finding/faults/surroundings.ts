import type { FaultName } from '../../../model/fault-names.ts';
import { picksUp, plus, without } from '../effects.ts';
import type { Effect, Entry } from '../fault.ts';
import { atTerminal, running, volts } from '../proofs.ts';
import { everywhere, logicStage } from '../traits.ts';

/** What a drive's edges or an arc amount to beside a cable, V behind the coupling: the envelope of a burst (common practice, no source). */
const burst = 60;
/** A cable further away or closer, V. */
const bursts = (...running: Parameters<typeof picksUp>[1][]) =>
  [35, burst, 100].map((volts) => picksUp(volts, ...running));
/** How far motor current lifts a return it shares, V (common practice, no source); with little current, and with much. */
const lift = 2;
const lifts = [1, lift, 3.5] as const;

const liftsReturn =
  (volts: number): Effect =>
  (rig, { state }) =>
    state.running === 'nothing'
      ? rig
      : [
          rig,
          plus(without(rig, 'returns joined'), {
            kind: 'voltage',
            name: 'returns joined',
            from: 'field 0 V',
            to: '0 V',
            volts,
          }),
        ];

/** What comes in from the rest of the machine. */
export const surroundingFaults = {
  'spindle-noise': {
    applies: everywhere,
    alters: picksUp(burst, 'spindle'),
    degrees: bursts('spindle'),
    likelihood: { fresh: 35, worked: 35 },
    proof: atTerminal(running('spindle')),
  },
  'motor-cable-noise': {
    applies: everywhere,
    alters: picksUp(burst, 'axis'),
    degrees: bursts('axis'),
    likelihood: { fresh: 15, worked: 15 },
    proof: atTerminal(running('axis')),
  },
  'shared-return': {
    applies: logicStage,
    alters: liftsReturn(lift),
    degrees: lifts.map(liftsReturn),
    likelihood: { fresh: 8, worked: 8 },
    proof: volts('field 0 V', '0 V', running('drives')),
  },
  'shield-wrong': {
    applies: everywhere,
    alters: picksUp(burst, 'spindle', 'axis'),
    degrees: bursts('spindle', 'axis'),
    likelihood: { fresh: 10, worked: 10 },
    proof: atTerminal(running('spindle')),
  },
} satisfies Partial<Record<FaultName, Entry>>;

import type { FaultName } from '../../../model/fault-names.ts';
import { alwaysWorked, conducts, neverWorked, nothingElectrical } from '../effects.ts';
import type { Effect, Entry } from '../fault.ts';
import { looking } from '../proofs.ts';
import { dryContact, hall, inductive, optical, worked } from '../traits.ts';

/** The machine comes by and does not work it; a finger or a steel rule does. */
const machineMisses: Effect = (rig) => conducts(rig, (how) => ({ 'pressed by machine': how.rest }));

/** What goes wrong between the moving part and the switch. */
export const mechanicalFaults = {
  'dog-misses': {
    applies: worked,
    alters: machineMisses,
    likelihood: { fresh: 25, worked: 60 },
    proof: looking,
  },
  'held-operated': {
    applies: dryContact,
    alters: alwaysWorked,
    likelihood: { fresh: 10, worked: 55 },
    proof: looking,
  },
  'dog-rides-past': {
    applies: worked,
    alters: (rig, scene) => [rig, ...[machineMisses(rig, scene)].flat()],
    likelihood: { fresh: 12, worked: 10 },
    proof: looking,
  },
  'actuator-sticks': {
    applies: dryContact,
    alters: (rig) => conducts(rig, (how) => ({ 'let go': how['pressed by hand'] })),
    likelihood: { fresh: 3, worked: 40 },
    proof: looking,
  },
  'gap-too-large': {
    applies: (wiring) => inductive(wiring) || hall(wiring),
    alters: machineMisses,
    likelihood: { fresh: 30, worked: 30 },
    proof: looking,
  },
  'chip-on-face': {
    applies: inductive,
    alters: alwaysWorked,
    likelihood: { fresh: 2, worked: 45 },
    proof: looking,
  },
  'bracket-loose': {
    applies: worked,
    alters: nothingElectrical,
    likelihood: { fresh: 6, worked: 45 },
    proof: looking,
    beyond: 'trip-wanders',
  },
  'magnet-wrong': {
    applies: hall,
    alters: neverWorked,
    likelihood: { fresh: 10, worked: 10 },
    proof: looking,
  },
  'optics-blind': {
    applies: optical,
    alters: (rig) => [
      rig,
      conducts(rig, (how) => ({ rest: how['pressed by hand'], 'let go': how['pressed by hand'] })),
    ],
    likelihood: { fresh: 6, worked: 25 },
    proof: looking,
  },
} satisfies Partial<Record<FaultName, Entry>>;

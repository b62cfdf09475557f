import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import type { FaultName } from '../../../../src/model/fault-names.ts';
import type { Machine } from './machine.ts';

type Seen = Readonly<Partial<Record<FaultName, number>>>;

/** How often it can be seen at all, where it is so (judgement of the trade, no source; not the troubleshooter's own figures). */
const seen: Readonly<Partial<Record<DeedName, Seen>>> = {
  lever: { 'held-operated': 1, 'actuator-sticks': 0.4 },
  face: {
    'chip-on-face': 1,
    'optics-blind': 0.95,
    'contact-bridged': 0.5,
    moisture: 0.2,
    'held-operated': 0.1,
  },
  settings: {
    'input-not-enabled': 1,
    'filter-too-long': 1,
    'filter-too-short': 1,
    // What polarity would be right is not plain to everyone.
    'polarity-inverted': 0.7,
    'polarity-for-all': 0.7,
  },
  blades: { 'common-blade-unused': 1, 'wrong-blade': 0.1 },
  gap: { 'gap-too-large': 1 },
  bracket: { 'bracket-loose': 1, 'dog-misses': 0.15, 'dog-rides-past': 0.1 },
  clip: { 'clip-off': 1 },
};

export function eyesSee({ faults }: Machine, deed: DeedName, chance: Random): boolean {
  const no = faults.reduce((left, fault) => left * (1 - (seen[deed]?.[fault] ?? 0)), 1);
  return chance() >= no;
}

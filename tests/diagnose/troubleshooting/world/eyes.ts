import type { Random } from '../../../../src/diagnose/circuit/random.ts';
import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import type { FaultName } from '../../../../src/model/fault-names.ts';
import type { Machine } from './machine.ts';

type Seen = Readonly<Partial<Record<FaultName, number>>>;

/** How often a person who is asked sees it, where it is so (judgement of the trade, no source; not the troubleshooter's own figures). */
const seen: Readonly<Partial<Record<DeedName, Seen>>> = {
  lever: { 'held-operated': 0.97, 'actuator-sticks': 0.4 },
  face: {
    'chip-on-face': 0.97,
    'optics-blind': 0.9,
    'contact-bridged': 0.5,
    moisture: 0.2,
    'held-operated': 0.1,
  },
  settings: {
    'input-not-enabled': 0.97,
    'filter-too-long': 0.93,
    'filter-too-short': 0.93,
    'polarity-inverted': 0.7,
    'polarity-for-all': 0.7,
  },
  blades: { 'common-blade-unused': 0.97, 'wrong-blade': 0.1 },
  gap: { 'gap-too-large': 0.97, 'sensor-supply-low': 0.03 },
  bracket: { 'bracket-loose': 0.95, 'dog-misses': 0.15, 'dog-rides-past': 0.1 },
  clip: { 'clip-off': 0.97 },
};
/** Where nothing of the kind is there. */
const imagined = 0.02;

export function eyesSee({ faults }: Machine, deed: DeedName, chance: Random): boolean {
  const no = faults.reduce((left, fault) => left * (1 - (seen[deed]?.[fault] ?? 0)), 1 - imagined);
  return chance() >= no;
}

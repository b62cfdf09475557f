import type { LookDeed } from '../../../model/deed-names.ts';
import type { FaultName } from '../../../model/fault-names.ts';
import type { Lit, YesNo } from '../../../model/outcomes.ts';
import { standing } from '../../circuit/rig.ts';
import { solve } from '../../circuit/solve.ts';
import { state } from '../../circuit/state.ts';
import { rigsWith } from '../../fault-finding/reading-of.ts';
import {
  changeover,
  dryContact,
  either,
  everywhere,
  hall,
  inductive,
  module,
  plate,
  type Trait,
  threeWire,
  twoWire,
  worked,
} from '../../fault-finding/traits.ts';
import type { DeedOf } from '../deed.ts';
import type { Imagined } from '../imagined.ts';
import { mixed, type Odds, sure } from '../odds.ts';

type Shown = Readonly<Partial<Record<FaultName, number>>>;

/** How often the answer is yes with nothing of the kind wrong (judgement, no source). */
const falseYes = 0.03;

const look = <Name extends LookDeed>(name: Name, minutes: number, applies: Trait, shown: Shown) =>
  ({
    name,
    kind: 'hands',
    minutes,
    mistaken: 0.02,
    applies,
    odds: ({ faults }: Imagined): Odds<YesNo> => {
      const no = faults.reduce((left, fault) => left * (1 - (shown[fault.name] ?? 0)), 1 - falseYes);
      return { yes: 1 - no, no };
    },
  }) as const;

/** Questions to the person's eyes; the shares say how often a fault is seen so (judgement, no source). */
export const lever = look('lever', 0.5, dryContact, { 'held-operated': 0.95, 'actuator-sticks': 0.3 });
export const face = look('face', 0.7, either(inductive, module, dryContact), {
  'chip-on-face': 0.95,
  'optics-blind': 0.85,
  'contact-bridged': 0.6,
  moisture: 0.3,
});
export const settings = look('settings', 1.5, everywhere, {
  'input-not-enabled': 0.95,
  'filter-too-long': 0.95,
  'filter-too-short': 0.9,
  'polarity-inverted': 0.6,
  'polarity-for-all': 0.6,
});
export const blades = look('blades', 2, changeover, { 'common-blade-unused': 0.95 });
export const gap = look('gap', 2, either(inductive, hall), { 'gap-too-large': 0.95 });
export const bracket = look('bracket', 1, worked, { 'bracket-loose': 0.92, 'dog-misses': 0.1 });
export const clip = look('clip', 0.5, plate, { 'clip-off': 0.92 });

/** The sensor's own lamp with steel, magnet or flag at its face: lit where it is fed and works. */
export const lamp = {
  name: 'lamp',
  kind: 'hands',
  minutes: 0.5,
  mistaken: 0.03,
  applies: either(threeWire, twoWire, module),
  odds: (scene) => scene.once('lamp', () => lit(scene)),
} as const satisfies DeedOf<'lamp'>;

function lit({ wiring, faults, world }: Imagined): Odds<Lit> {
  const worked = state({ actuation: wiring.contact === 'normally open' ? 'pressed by hand' : 'rest' });
  const rigs = rigsWith(wiring, worked, faults, world);
  return mixed(
    rigs.map((rig) => {
      const solution = solve(standing(rig, worked, wiring));
      const [plus, minus] = ['device supply', 'device common'].map((node) => solution.voltsAt(node) ?? 0);
      const fed = twoWire(wiring)
        ? Math.abs(solution.ampsIn('signal core')) > 5e-4
        : (plus ?? 0) - (minus ?? 0) > (world.numbers('supply') > 5.5 ? 8 : 3);
      return [1 / rigs.length, sure<Lit>(fed && rig.conducts[worked.actuation] ? 'on' : 'off')] as const;
    }),
  );
}

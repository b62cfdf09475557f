import type { FaultName } from '../../src/model/fault-names.ts';

/** How the bench plays a fault; what none of its hands, plugs and levels can bring out is named for what would. */
export type Played =
  /** The volts at its pin, of ngspice. */
  | { readonly by: 'volts' }
  /** A lever, blade or setting of the bench's own, as `--fault` spells it before the colon. */
  | { readonly by: 'plant'; readonly plant: string }
  /** The contact no longer moves: it stays as it is at rest. */
  | { readonly by: 'unmoved' }
  /** Now and then as if it were worked. */
  | { readonly by: 'blinking' }
  | { readonly by: 'filter'; readonly ms: number }
  | { readonly by: 'dead pin'; readonly conducting: boolean }
  | { readonly by: 'nothing here'; readonly shows: NeededToShow };

export type NeededToShow =
  | 'only where the machine itself works the switch'
  | 'only while drives, spindle or axes run'
  | 'only while the cable is bent'
  | 'only in what the drives’ power does'
  | 'only in what people make of it';

const volts = { by: 'volts' } as const;
const plant = (name: string) => ({ by: 'plant', plant: name }) as const;
const shows = (what: NeededToShow) => ({ by: 'nothing here', shows: what }) as const;

const inMotion = shows('only where the machine itself works the switch');
const running = shows('only while drives, spindle or axes run');

export const howPlayed: Readonly<Record<FaultName, Played>> = {
  'signal-core-open': volts,
  'common-core-open': volts,
  'signal-to-0-v': volts,
  'fed-signal-to-0-v': volts,
  'signal-to-plus': volts,
  'fed-signal-to-plus': volts,
  'signals-together': volts,
  'contact-welded': plant('welded'),
  'contact-filmed': volts,
  'contact-never-makes': plant('never-makes'),
  'common-blade-unused': plant('never-makes'),
  'wrong-blade': plant('wrong-contact-declared'),
  'dog-misses': inMotion,
  'held-operated': plant('bent-lever'),
  'dog-rides-past': inMotion,
  'actuator-sticks': plant('sticks'),
  'plug-half-mated': volts,
  'loose-clamp': volts,
  'wrong-terminal': volts,
  'inputs-crossed': volts,
  'plug-shifted': volts,
  'pull-resistor-missing': volts,
  'pull-resistor-weak': running,
  'coupler-light-open': volts,
  'coupler-output-shorted': volts,
  'coupler-reversed': volts,
  'coupler-common-missing': volts,
  'sensor-supply-reversed': volts,
  'pnp-for-npn': volts,
  'npn-for-pnp': volts,
  'sensor-supply-missing': volts,
  'sensor-supply-low': volts,
  'gap-too-large': inMotion,
  'chip-on-face': plant('bent-lever'),
  'contact-bridged': volts,
  moisture: volts,
  'spindle-noise': running,
  'motor-cable-noise': running,
  'shared-return': running,
  'shield-wrong': running,
  'core-breaks-when-flexed': shows('only while the cable is bent'),
  'polarity-inverted': plant('polarity-reversed'),
  'polarity-for-all': plant('polarity-reversed'),
  'filter-too-long': { by: 'filter', ms: 80 },
  'filter-too-short': { by: 'filter', ms: 0 },
  // 10 kohm and 10 uF: a tenth of a second.
  'filter-wrong-value': { by: 'filter', ms: 100 },
  'pin-dead-open': { by: 'dead pin', conducting: false },
  'pin-dead-conducting': { by: 'dead pin', conducting: true },
  'input-not-enabled': plant('not-enabled'),
  'shared-input-misread': shows('only in what people make of it'),
  'one-leg-open': volts,
  'one-contact-bypassed': plant('welded'),
  'bracket-loose': inMotion,
  'magnet-wrong': { by: 'unmoved' },
  'optics-blind': { by: 'blinking' },
  'contact-block-off': plant('welded'),
  'stop-is-status-only': shows('only in what the drives’ power does'),
  'clip-off': plant('never-makes'),
  'plate-bonded': volts,
  'returns-not-joined': volts,
  'wrong-field-voltage': volts,
  'leakage-holds-on': volts,
  'drop-too-big': volts,
  'back-feed': volts,
  'ends-swapped': volts,
};

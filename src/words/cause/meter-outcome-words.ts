import type { MeterDeed } from '../../model/deed-names.ts';
import type { Bin } from '../../model/outcomes.ts';

type Bins = Readonly<Record<Bin, string>>;
/** A deed whose limits divide fewer bins has no reading above the last of them. */
const bins = (...[lowest, ...more]: readonly [string, string, string, string?, string?]): Bins => {
  const [second, third, fourth = third, fifth = fourth] = more;
  return { 'bin 0': lowest, 'bin 1': second, 'bin 2': third, 'bin 3': fourth, 'bin 4': fifth };
};

const ohms = bins('under 10 ohm', '10 ohm to 1 Mohm', 'over 1 Mohm');
const shares = bins(
  'below zero',
  'under 0.15 of the supply',
  '0.15 to 0.5 of the supply',
  '0.5 to 0.85 of the supply',
  'about the supply or more',
);

/** Where a reading falls among the figures that tell the causes apart. */
export const meterOutcomes: Readonly<Record<MeterDeed, Bins>> = {
  'ohms-signal-core': ohms,
  'ohms-common-core': ohms,
  'ohms-signal-to-return': ohms,
  'ohms-signal-to-plus': ohms,
  'ohms-contact-closed': ohms,
  'ohms-contact-open': ohms,
  'ohms-pull': bins('under 10 ohm', '10 ohm to 25 kohm', '25 kohm to 1 Mohm', 'over 1 Mohm'),
  'ohms-returns': ohms,
  'volts-terminal-closed': shares,
  'volts-terminal-open': shares,
  'volts-sensor-supply': bins(
    'below zero: turned round',
    'next to nothing',
    'under 0.6 of the supply',
    'about the supply',
    'far above the supply',
  ),
  'volts-sensor-output': shares,
  'volts-coupler-common': shares,
  'amps-closed': bins('under 0.2 mA', '0.2 to 2 mA', '2 to 20 mA', 'over 20 mA'),
  'amps-open': bins('under 0.2 mA', '0.2 to 1 mA', '1 to 2 mA', 'over 2 mA'),
};

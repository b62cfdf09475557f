import type { MeterAsk } from '../../model/ask.ts';
import type { MeterDeed } from '../../model/deed-names.ts';
import type { Machine } from '../../model/machine.ts';
import { cautions } from '../cautions.ts';
import type { AskWords } from '../instruction.ts';
import { named, shortly } from '../place.ts';

const bothOff =
  'Its plug is out at the controller. Take its cores off at the switch too, and put them back afterwards.';
const offSwitch = 'It is unplugged at the switch.';
const offController =
  'Its plug is out at the controller. Switch the controller off before you measure, and on again before you type the number.';

/** Where the tips go, and what is done to the switch meanwhile. */
export const meterPlaces = {
  'ohms-signal-core': ['between the two ends of its signal core', bothOff],
  'ohms-common-core': ['between the two ends of its return core', bothOff],
  'ohms-signal-to-return': ['between its signal core and 0 V of the controller', bothOff],
  'ohms-signal-to-plus': ['between its signal core and the + that feeds it', bothOff],
  'ohms-contact-closed': ['across the switch alone, worked so that its contact should be closed', offSwitch],
  'ohms-contact-open': ['across the switch alone, worked so that its contact should be open', offSwitch],
  'ohms-pull': ['between its terminal and the supply or 0 V that its pull resistor goes to', offController],
  'volts-terminal-closed': [
    'between its terminal and 0 V of the controller, the switch worked so that it should conduct',
    '',
  ],
  'volts-terminal-open': [
    'between its terminal and 0 V of the controller, the switch worked so that it should not conduct',
    '',
  ],
  'volts-sensor-supply': ['between + and 0 V at the sensor itself', ''],
  'volts-sensor-output': [
    'between output and 0 V at the sensor itself, worked so that it should conduct',
    '',
  ],
  'ohms-returns': ['between 0 V of the sensors and 0 V of the controller', offController],
  'volts-coupler-common': ['between the common of the optocouplers and 0 V of their supply', ''],
  'amps-closed': ['in series with its signal terminal, the switch worked so that it should conduct', ''],
  'amps-open': ['in series with its signal terminal, the switch worked so that it should not conduct', ''],
} as const satisfies Record<MeterDeed, readonly [where: string, before: string]>;

const quantities = { voltage: 'volts, DC', resistance: 'ohms', current: 'milliamperes' };

export function meterWords(ask: MeterAsk, machine: Machine): AskWords {
  const what = named(ask.subject, machine);
  const [where, before] = meterPlaces[ask.where];
  const over = ask.quantity === 'resistance' ? ' Nothing joins the two: "over-range".' : '';
  const ends = before === '' ? '' : `${before} `;
  return {
    text: `Only a meter tells more now. For ${what}: ${ends}Measure ${quantities[ask.quantity]} ${where}. Type the number in ${ask.unit}.${over} No meter: "cannot".`,
    cautions: cautions('meter', 'motorsOff', 'mains'),
    short: `Meter, ${ask.unit}: ${shortly(ask.subject, machine)}`,
  };
}

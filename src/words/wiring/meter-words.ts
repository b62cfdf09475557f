import type { MeterShown, MeterStudied, WiringAsStudied } from '../../model/wiring-study.ts';
import { nodeText } from './node-words.ts';
import { ampText, ohmText, voltText } from './quantities.ts';

const writers = { volts: voltText, ohms: ohmText, amps: ampText } as const;

function shownText(shown: MeterShown, quantity: MeterStudied['quantity']): string {
  if (shown.kind === 'over range') return 'over range';
  if (shown.kind === 'wanders') return 'jumps or wanders';
  const [least, most] = [writers[quantity](shown.least), writers[quantity](shown.most)];
  return least === most ? least : `jumps between ${least} and ${most}`;
}

const undone = {
  'at controller': ', power off, unplugged at the controller',
  'at switch': ', power off, taken off at the switch',
  'both ends': ', power off, both ends undone',
  nothing: '',
} as const satisfies Record<MeterStudied['undone'], string>;

/** "ohms from the signal core at the controller to ..., power off, both ends undone: over range (sound: 0.4 ohm)". */
export function meterText(meter: MeterStudied, wiring: WiringAsStudied): string {
  const [from, to] = [nodeText(meter.from, wiring) ?? meter.from, nodeText(meter.to, wiring) ?? meter.to];
  const between =
    meter.quantity === 'amps' ? `amperes at ${from}` : `${meter.quantity} from ${from} to ${to}`;
  const how = [
    meter.pressed ? ', pressed' : '',
    meter.plugOut ? ', unplugged at the controller' : '',
    meter.running === 'nothing' ? '' : `, ${running[meter.running]}`,
    meter.handling === 'left alone'
      ? ''
      : `, ${meter.handling === 'tugged' ? 'while tugging it' : 'while bending the cable'}`,
    undone[meter.undone],
  ].join('');
  return `${between}${how}: ${shownText(meter.faulty, meter.quantity)} (sound: ${shownText(meter.sound, meter.quantity)})`;
}

const running = { drives: 'drives on', spindle: 'spindle running', axis: 'axis moving' } as const;

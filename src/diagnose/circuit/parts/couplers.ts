import type { InputFamily } from '../../../model/wiring-names.ts';
import {
  type Control,
  type Diode,
  ground,
  idealityFor,
  type Network,
  type Node,
  resistor,
} from '../network.ts';
import { loopLimits } from '../pin-limits.ts';
import type { Numbers } from '../values.ts';

/** The light's drop is stated at 10 mA. */
const ratedAmps = 0.01;
const saturation = 1e-18;

const light = (from: Node, to: Node, volts: number): Diode => ({
  kind: 'diode',
  name: 'light',
  from,
  to,
  saturation,
  ideality: idealityFor(volts, ratedAmps, saturation),
});

/** A clean board between two terminals, ohm: an input with nothing on it is not quite alone (common practice, no source). */
const boardLeak = resistor('board leakage', 'terminal', ground, 1e9);

/** Where the series resistor hangs between terminal and light, the input's own voltage is measured at the terminal. */
const output = (v: Numbers, family: InputFamily, plus: Node, minus: Node): Network => {
  const { amps, volts } = loopLimits(family);
  const when: Control[] = [{ by: 'current', through: 'light', ...amps }];
  if (volts) when.push({ by: 'voltage', plus, minus, ...volts });
  return [
    resistor('collector pull-up', 'logic +', 'pin', 1e4),
    { kind: 'capacitor', name: 'filter', from: 'pin', to: ground, farads: v('filter') },
    {
      kind: 'switch',
      name: 'output',
      from: 'pin',
      to: ground,
      closed: true,
      closedOhms: 200,
      openOhms: 1e9,
      when,
    },
  ];
};

/** Takes current from a contact that joins the terminal to +; its common stands on the field's 0 V. */
export const fedCoupler = (v: Numbers, family: InputFamily): Network => [
  resistor('series', 'terminal', 'light +', v('series')),
  light('light +', 'coupler common', v('led drop')),
  resistor('bleed', 'light +', 'coupler common', v('bleed')),
  resistor('common strap', 'coupler common', 'field 0 V', 0.01),
  boardLeak,
  ...output(v, family, 'terminal', 'field 0 V'),
];

/** Gives current to a contact that joins the terminal to 0 V; its common stands on the field's +. */
export const drawnCoupler = (v: Numbers, family: InputFamily): Network => [
  resistor('common strap', 'field +', 'coupler common', 0.01),
  light('coupler common', 'light −', v('led drop')),
  resistor('bleed', 'coupler common', 'light −', v('bleed')),
  resistor('series', 'light −', 'terminal', v('series')),
  boardLeak,
  ...output(v, family, 'field +', 'terminal'),
];

import type { StateStudied, WiringAsStudied } from '../../../model/wiring-study.ts';
import { valueText } from '../../../words/wiring/circuit-words.ts';
import { voltText } from '../../../words/wiring/quantities.ts';

/** Where things stand on every sheet, so that two drawings can be laid side by side. */
export const sheet = {
  width: 640,
  height: 330,
  plus: 46,
  signal: 168,
  zero: 290,
  pin: 62,
  terminal: 300,
  far: 535,
} as const;

/** What a part of the drawing may ask. */
export interface Drawn {
  readonly wiring: WiringAsStudied;
  readonly state: StateStudied;
  /** "4.99 V", or that it floats. */
  readonly volts: (node: string) => string;
  readonly value: (name: string) => string;
  readonly has: (name: string) => boolean;
  readonly amps: (part: string) => number;
}

export function drawnOf(wiring: WiringAsStudied, state: StateStudied): Drawn {
  const values = new Map(wiring.values.map((each) => [each.name, each.nominal]));
  const volts = new Map(state.volts.map((each) => [each.node, each.volts]));
  return {
    wiring,
    state,
    volts: (node) => {
      const found = volts.get(node);
      return found === undefined ? 'floats' : voltText(found);
    },
    value: (name) => valueText(name, values.get(name) ?? Number.POSITIVE_INFINITY),
    has: (name) => Number.isFinite(values.get(name) ?? Number.POSITIVE_INFINITY),
    amps: (part) => state.currents.find((each) => each.part === part)?.amps ?? 0,
  };
}

import type { InputFamily } from '../../model/wiring-names.ts';

/** What voltages at the pin surely read as; between `low` and `high` it depends on the unit and on what was before. */
export type PinLimits =
  | {
      readonly kind: 'threshold';
      readonly low: number;
      readonly high: number;
      readonly lowMeans: 'conducting' | 'open';
      /** V the pin can reach at most: its clamps hold it there. */
      readonly ceiling: number;
    }
  /** A window comparator: shorted, conducting, open, cut, each between two limits. */
  | { readonly kind: 'window'; readonly limits: readonly [number, number, number]; readonly ceiling: number };

/** Guaranteed thresholds of a logic input at its supply, V. */
export interface LogicLimits {
  readonly low: number;
  readonly high: number;
}

/**
 * cmos 5 V: 0.3 and 0.6 of the supply (ATmega328P data sheet, 2.7 to 5.5 V). cmos 3.3 V: the strictest of several parts, 0.8 V
 * (JESD8 LVTTL) and 0.7 of the supply (STM32F050). lvttl: JESD8. ttl: 5 V TTL. schmitt: 74HC1G14, -40 to 85 degrees C, the lowest
 * falling and the highest rising threshold.
 */
export function logicLimits(family: InputFamily, supply: number): LogicLimits {
  switch (family) {
    case 'cmos 3.3 V':
      return { low: 0.8, high: 0.7 * supply };
    case 'lvttl':
    case 'ttl':
      return { low: 0.8, high: 2 };
    case 'schmitt':
      return { low: onSchmitt('fallingLeast', supply), high: onSchmitt('risingMost', supply) };
    default:
      return { low: 0.3 * supply, high: 0.6 * supply };
  }
}

/** 74HC1G14 thresholds by supply, V (data sheet, -40 to 85 degrees C). */
const schmittRows = [
  { supply: 2, fallingLeast: 0.3, risingMost: 1.5 },
  { supply: 4.5, fallingLeast: 0.9, risingMost: 3.15 },
  { supply: 6, fallingLeast: 1.2, risingMost: 4.2 },
] as const;

function onSchmitt(limit: 'fallingLeast' | 'risingMost', supply: number): number {
  const [low, middle, high] = schmittRows;
  const [from, to] = supply <= middle.supply ? [low, middle] : [middle, high];
  return from[limit] + ((supply - from.supply) / (to.supply - from.supply)) * (to[limit] - from[limit]);
}

/** Loop currents and terminal voltages of a 24 V input that is surely off at or below, surely on from. A and V. */
export interface LoopLimits {
  readonly amps: LogicRange;
  /** Undefined where only the light's current counts. */
  readonly volts: LogicRange | undefined;
}
interface LogicRange {
  readonly off: number;
  readonly on: number;
}

/** IEC 61131-2:2007 table 7 (types 2 and 3 from memory); the plain optocoupler loop: common practice, no source. */
export function loopLimits(family: InputFamily): LoopLimits {
  switch (family) {
    case 'IEC 61131-2 type 1':
      return { amps: { off: 0.5e-3, on: 2e-3 }, volts: { off: 5, on: 15 } };
    case 'IEC 61131-2 type 2':
      return { amps: { off: 2e-3, on: 6e-3 }, volts: { off: 5, on: 11 } };
    case 'IEC 61131-2 type 3':
      return { amps: { off: 1.5e-3, on: 2e-3 }, volts: { off: 5, on: 11 } };
    default:
      return { amps: { off: 0.5e-3, on: 2e-3 }, volts: undefined };
  }
}

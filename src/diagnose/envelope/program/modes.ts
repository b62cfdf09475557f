import type { AxisLetter } from '../../../model/machine.ts';
import type { System } from './boxes.ts';

export type MotionMode =
  | 'rapid'
  | 'line'
  | 'arc-clockwise'
  | 'arc-counter-clockwise'
  | 'drill'
  | 'probe'
  | 'none';
export type Plane = 'XY' | 'ZX' | 'YZ';

/** Where one axis stands: a number in a coordinate system, before any temporary shift. */
export interface Place {
  readonly system: System;
  readonly value: number;
}

/** What holds from block to block (RS-274 modes; NISTIR 6556, 3.5 and 3.6). */
export interface Modes {
  motion: MotionMode;
  plane: Plane;
  /** mm a program unit. */
  unit: number;
  absolute: boolean;
  absoluteCentres: boolean;
  system: System;
  /** G98: back to the height before the cycle; else to R. */
  retractToOld: boolean;
  /** Sticky words of a drilling cycle. */
  drill: { z: number | undefined; r: number | undefined };
  /** Temporary shift by G92, mm by axis. */
  shift: Partial<Record<AxisLetter, number>>;
  places: Partial<Record<AxisLetter, Place>>;
}

export const startModes = (unit: number): Modes => ({
  motion: 'none',
  plane: 'XY',
  unit,
  absolute: true,
  absoluteCentres: false,
  system: 'active',
  retractToOld: true,
  drill: { z: undefined, r: undefined },
  shift: {},
  places: {},
});

/** First and second axis of a plane, in the order that turns counter-clockwise seen from the third; their centre words. */
export const planes = {
  XY: { first: 'X', second: 'Y', third: 'Z', centre: ['I', 'J'] },
  ZX: { first: 'Z', second: 'X', third: 'Y', centre: ['K', 'I'] },
  YZ: { first: 'Y', second: 'Z', third: 'X', centre: ['J', 'K'] },
} as const satisfies Record<Plane, unknown>;

const systems: Readonly<Record<number, System>> = {
  54: 'G54',
  55: 'G55',
  56: 'G56',
  57: 'G57',
  58: 'G58',
  59: 'G59',
  59.1: 'G59.1',
  59.2: 'G59.2',
  59.3: 'G59.3',
};

const motions: Readonly<Record<number, MotionMode>> = {
  0: 'rapid',
  1: 'line',
  2: 'arc-clockwise',
  3: 'arc-counter-clockwise',
  38.2: 'probe',
  80: 'none',
};

/** Codes that move nothing by themselves and change no place. */
const idle = new Set([4, 40, 49, 61, 61.1, 64, 93, 94, 95]);

/** Takes one G code into the modes; false where it is not a mode this reader knows. */
export function takeMode(modes: Modes, code: number): boolean {
  const system = systems[code];
  const motion = motions[code];
  if (system) modes.system = system;
  else if (motion) {
    modes.motion = motion;
    modes.drill = { z: undefined, r: undefined };
  } else if (code >= 81 && code <= 89 && Number.isInteger(code)) modes.motion = 'drill';
  else if (code === 17) modes.plane = 'XY';
  else if (code === 18) modes.plane = 'ZX';
  else if (code === 19) modes.plane = 'YZ';
  else if (code === 20) modes.unit = 25.4;
  else if (code === 21) modes.unit = 1;
  else if (code === 90) modes.absolute = true;
  else if (code === 91) modes.absolute = false;
  else if (code === 90.1) modes.absoluteCentres = true;
  else if (code === 91.1) modes.absoluteCentres = false;
  else if (code === 98) modes.retractToOld = true;
  else if (code === 99) modes.retractToOld = false;
  else return idle.has(code);
  return true;
}

import type { SeekAlarm } from '../src/diagnose/seek/alarm.ts';
import type { SeekExpectation } from '../src/diagnose/seek/expectation.ts';
import type { Reading } from '../src/model/reading.ts';
import type { Simulated } from './simulated-seek.mjs';

export interface SimulatedMachine {
  readonly seed: number;
  readonly step: number;
  readonly toward: 1 | -1;
  readonly distance: number;
  readonly start: number;
}
type Watch = new (expected: SeekExpectation) => { feed(reading: Reading): readonly SeekAlarm[] };

export function machineFor(seed: number): SimulatedMachine;
export function seekOf(
  machine: SimulatedMachine,
  rightWay: boolean,
): Simulated & { readonly from: number; readonly way: 1 | -1 };
export function expectationFor(machine: SimulatedMachine): SeekExpectation;
export function measureSeeks(
  watch: Watch,
  runs: number,
): {
  readonly wrongWay: readonly {
    readonly seed: number;
    readonly delay: number | undefined;
    readonly travelled: number | undefined;
  }[];
  readonly rightWay: readonly { readonly seed: number; readonly alarms: readonly SeekAlarm[] }[];
};

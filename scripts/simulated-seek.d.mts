import type { StatusReading } from '../src/model/reading.ts';

export interface SimulatedSwitch {
  /** mm, physical; ignored where `when` is given. */
  readonly actuates?: number;
  readonly frees?: number;
  readonly outwards?: 1 | -1;
  readonly when?: (world: SimulatedWorld) => boolean;
}

export interface SimulatedWorld {
  readonly time: number;
  readonly commanded: number;
  readonly physical: number;
  readonly activity: string;
}

export interface PlanPart {
  readonly wait?: number;
  readonly by?: number;
  readonly speed?: number;
  readonly way?: 1 | -1;
  readonly until?: string;
  readonly most?: number;
  readonly set?: number;
  readonly activity?: 'still' | 'moving' | 'homing' | 'fault';
}

export interface Setup {
  readonly plan: readonly PlanPart[];
  readonly axis?: string;
  readonly others?: Readonly<Record<string, number>>;
  readonly switches?: Readonly<Record<string, SimulatedSwitch>>;
  readonly start?: number;
  readonly stands?: number;
  readonly sense?: 1 | -1;
  readonly driven?: boolean;
  readonly acceleration?: number;
  readonly step?: number;
  readonly period?: number;
  readonly jitter?: number;
  readonly loss?: number;
  readonly dither?: number;
  /** Chance a report that noise turns one input over in it. */
  readonly strike?: number;
  readonly seed?: number;
  readonly levelsOnly?: boolean;
}

export interface Simulated {
  readonly readings: readonly StatusReading[];
  readonly truth: readonly { readonly at: number; readonly position: number }[];
  readonly taken: readonly number[];
  readonly stands: number;
  readonly commanded: number;
}

export function seeded(seed: number): () => number;
export function simulate(setup: Setup): Simulated;
export function homingPlan(of: {
  way: 1 | -1;
  input: string;
  approach?: number;
  slow?: number;
  backOff?: number;
  most?: number;
  rest?: number;
  value?: number;
}): readonly PlanPart[];

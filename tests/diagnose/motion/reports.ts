import { type Setup, simulate } from '../../../scripts/simulated-seek.mjs';
import { type Motion, motionOf } from '../../../src/diagnose/motion/motion.ts';
import type { Window } from '../../../src/model/procedure.ts';
import type { EdgeReading, Reading, StatusReading } from '../../../src/model/reading.ts';
import { mm, ms } from '../../../src/model/units.ts';

export const windowOf = (readings: readonly Reading[]): Window => ({
  from: ms(0),
  to: ms(readings.at(-1)?.arrived ?? 0),
  lead: undefined,
  readings,
});

/** A report of X at a time and place; `home` and `level` of one input. */
export const report = (
  at: number,
  position: number,
  more: Partial<Pick<StatusReading, 'activity' | 'segment' | 'lost'>> & {
    home?: boolean;
    level?: 'H' | 'L';
    noActive?: boolean;
  } = {},
): StatusReading => ({
  kind: 'status',
  arrived: ms(at + 1000),
  at: ms(at),
  segment: more.segment ?? 1,
  lost: more.lost ?? 0,
  inputs: ['home'],
  axes: ['X'],
  activity: more.activity ?? 'moving',
  levels: [more.level ?? (more.home ? 'H' : 'L')],
  active: [more.noActive ? '?' : more.home ? '1' : '0'],
  positions: [mm(position)],
});

export const edge = (at: number, level: 'H' | 'L'): EdgeReading => ({
  kind: 'edge',
  arrived: ms(at + 1000),
  at: ms(at),
  segment: 1,
  lost: 0,
  input: 'home',
  level,
});

/** The motion of X as a simulated machine's reports show it. */
export function seenMotion(setup: Partial<Setup> & Pick<Setup, 'plan'>): {
  readonly motion: Motion;
  readonly window: Window;
} {
  const { readings } = simulate({ step: 0.0125, ...setup });
  const window = windowOf(readings);
  const abilities = { step: mm(setup.step ?? 0.0125), acceleration: setup.acceleration };
  return { motion: motionOf(window, 'X', abilities), window };
}

/** Runs as `still`, `+` and `-`. */
export const course = ({ runs }: Motion): string =>
  runs.map((run) => (run.kind === 'still' ? 'still' : run.direction === 1 ? '+' : '-')).join(' ');

import { stand } from './stand.ts';

/** Where each axis stands among the positions of a report. */
export const index = { X: 0, Y: 1, Z: 2, A: 3 } as const;

/** One homing, watched from before it starts to its end. */
export function homed(fault: string | readonly string[], axis = 'X', seed = 1) {
  const at = stand({ faults: [fault].flat(), seed });
  at.wait(50);
  at.bench.eyes.watch();
  at.bench.home(axis);
  at.settle();
  return { ...at, eyes: at.bench.eyes };
}

/** One move, watched. */
export function moved(fault: string | readonly string[], axis: string, by: number) {
  const at = stand({ faults: [fault].flat() });
  const from = at.bench.eyes.position(axis);
  at.bench.eyes.watch();
  at.bench.move(axis, by);
  at.settle();
  return { ...at, eyes: at.bench.eyes, way: at.bench.eyes.position(axis) - from };
}

/** Positions of one axis while an input of this name was told active. */
export function toldActive({ told, names }: ReturnType<typeof homed>, input: string): readonly number[] {
  return told()
    .filter(({ active }) => active[names().indexOf(input)] === '1')
    .map(({ positions }) => positions[0] ?? Number.NaN);
}

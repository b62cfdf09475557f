import type { Column } from './series.ts';

/** Lines one after the other in one trial that hold the same text. */
export interface Run {
  readonly trial: number;
  /** Index of the text; -1 where a line of the kind holds nothing. */
  readonly value: number;
  readonly lines: number;
}

/** A column as runs: what stands still for minutes is looked at once. */
export function runsOf({ at, values }: Column, trialOf: Int32Array): readonly Run[] {
  const runs: Run[] = [];
  for (const [i, index] of at.entries()) push(runs, trialOf[index] ?? -1, values[i] ?? 0);
  return runs;
}

/** The same over all lines of a kind, also those in which the name is missing. */
export function runsAmong(
  { at, values }: Column,
  members: readonly number[],
  trialOf: Int32Array,
): readonly Run[] {
  const runs: Run[] = [];
  let i = 0;
  for (const index of members) {
    while (i < at.length && (at[i] ?? 0) < index) i++;
    push(runs, trialOf[index] ?? -1, at[i] === index ? (values[i] ?? 0) : -1);
  }
  return runs;
}

type Growing = { trial: number; value: number; lines: number };

function push(runs: Growing[], trial: number, value: number): void {
  const last = runs[runs.length - 1];
  if (last && last.trial === trial && last.value === value) last.lines++;
  else runs.push({ trial, value, lines: 1 });
}

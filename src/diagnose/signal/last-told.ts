import type { StatusReading } from '../../model/reading.ts';

/** A report says nothing of an input: its line was damaged there, or the controller does not know. */
export const isUntold = ({ levels, active }: StatusReading, index: number): boolean =>
  (levels[index] ?? '?') === '?' && (active[index] ?? '?') === '?';

/** It leaves nothing of its inputs and its activity untold. */
export const isWhole = (report: StatusReading): boolean =>
  report.activity !== '?' && report.inputs.every((_, i) => !isUntold(report, i));

/**
 * What is known at a report: where it leaves an input or the activity untold, what was last told of it. Not knowing is no change: taken
 * for one it would end an ask before its press, and every press after it would be looked for in the wrong window.
 */
export function withLastTold(report: StatusReading, before: StatusReading | undefined): StatusReading {
  if (!before || before.inputs !== report.inputs) return report;
  const { levels, active, activity } = report;
  // A stream whose inputs stand still hands over the same lists again.
  if (levels === before.levels && active === before.active && activity === before.activity) return report;
  const untold = report.inputs.some((_, i) => isUntold(report, i) && !isUntold(before, i));
  if (!untold && (activity !== '?' || before.activity === '?')) return report;
  return {
    ...report,
    activity: activity === '?' ? before.activity : activity,
    levels: levels.map((level, i) => (isUntold(report, i) ? (before.levels[i] ?? '?') : level)),
    active: active.map((state, i) => (isUntold(report, i) ? (before.active[i] ?? '?') : state)),
  };
}

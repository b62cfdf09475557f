import type { StatusReading } from '../../../model/reading.ts';

/** A position may turn round between two reports by so much, mm. */
const turnsWithin = 2;

/**
 * Where lines arrive damaged and carry no sum, one report alone proves nothing: a value that differs from the report before and
 * from the one after is told as unknown. It costs one report of delay, and hides what lasts no longer than one report.
 */
export function agreeing(reports: 1 | 2) {
  let before: StatusReading | undefined;
  let waiting: StatusReading | undefined;

  const judged = (next: StatusReading | undefined): readonly StatusReading[] => {
    const now = waiting;
    if (now === undefined) return [];
    const alone = <Value>(value: Value, last: Value | undefined, after: Value | undefined) =>
      last !== undefined && value !== last && value !== after;
    const told: StatusReading = {
      ...now,
      levels: now.levels.map((level, i) => (alone(level, before?.levels[i], next?.levels[i]) ? '?' : level)),
      active: now.active.map((state, i) => (alone(state, before?.active[i], next?.active[i]) ? '?' : state)),
      activity: alone(now.activity, before?.activity, next?.activity) ? '?' : now.activity,
      positions: now.positions.map((at, i) =>
        leaps(at, before?.positions[i], next?.positions[i]) ? undefined : at,
      ),
    };
    before = now;
    return [told];
  };

  return {
    take(status: StatusReading): readonly StatusReading[] {
      if (reports === 1) return [status];
      const told = judged(status);
      waiting = status;
      return told;
    },
    /** Nothing comes after it. */
    end(): readonly StatusReading[] {
      const told = judged(undefined);
      before = waiting = undefined;
      return told;
    },
  };
}

const leaps = (at: number | undefined, last: number | undefined, next: number | undefined): boolean =>
  at !== undefined &&
  last !== undefined &&
  next !== undefined &&
  (at < Math.min(last, next) - turnsWithin || at > Math.max(last, next) + turnsWithin);

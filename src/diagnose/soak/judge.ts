import type { Finding } from '../../model/finding.ts';
import type { Verdict } from '../../model/verdict.ts';
import { meanCountAtMost95, meanCountInterval } from './poisson.ts';
import type { TripCounter } from './trips.ts';

/** Less than this says nothing about hours. ms; common practice, no source. */
const leastWatched = 60_000;
const hour = 3_600_000;

/** One verdict an input: none tripped bounds the rate, any trip is a fault of its own, told with the interval of its rate. */
export function judgeSoak(counter: TripCounter): readonly Verdict[] {
  const hours = counter.watched / hour;
  return counter.soaked.map(({ input, trips }): Verdict => {
    const common = { check: 'soak', subject: input, evidence: 'commanded', traces: [] } as const;
    const enough = counter.watched >= leastWatched;
    const bound = hours > 0 ? { perHourAtMost95: meanCountAtMost95(trips) / hours } : {};
    const facts = { soak: { trips, watched: counter.watched, ...bound } };
    if (trips > 0) {
      const { low, high } = meanCountInterval(trips);
      const rate = hours > 0 ? { low: low / hours, high: high / hours } : {};
      const finding: Finding = { kind: 'false-trips', input, trips, ...rate };
      return { ...common, status: 'failed', findings: [finding], missing: [], facts };
    }
    return enough
      ? { ...common, status: 'proved', findings: [], missing: [], facts }
      : { ...common, status: 'inconclusive', findings: [], missing: ['watched-too-short'], facts };
  });
}

import type { Mm } from '../../model/units.ts';
import type { Interval } from './interval.ts';
import { stepsForSpeed } from './limits.ts';
import type { AxisSample } from './track.ts';

export interface Speed extends Interval {
  /** mm/s, signed, between `low` and `high`. */
  readonly value: number;
}

/**
 * The speed an axis holds while it goes one way: the middle of the speeds over spans long enough that rounding costs little, so that ramps at both
 * ends, late reports and single wrong positions do not pull it. Its bounds are what rounding by one step could have made of the
 * longest span around the middle. mm/s, signed; undefined under two samples or without passing time.
 */
export function cruiseSpeed(samples: readonly AxisSample[], step: Mm): Speed | undefined {
  const whole = Math.abs((samples.at(-1)?.position ?? 0) - (samples[0]?.position ?? 0));
  const spans = spansOver(samples, Math.max(step * stepsForSpeed, whole / 4));
  if (spans.length === 0) return undefined;
  const sorted = [...spans].sort((a, b) => a.speed - b.speed);
  const inside = sorted.slice(Math.floor(sorted.length / 4), Math.ceil((sorted.length * 3) / 4));
  const chosen = inside.length > 0 ? inside : sorted;
  const value = middle(chosen.map(({ speed }) => speed));
  const seconds = chosen.reduce((most, each) => Math.max(most, each.seconds), 0);
  const doubt = step / seconds;
  return { value, low: value - doubt, high: value + doubt };
}

interface Span {
  readonly speed: number;
  readonly seconds: number;
}

/** From each sample to the first one far enough away; the whole stretch where it is shorter than that. */
function spansOver(samples: readonly AxisSample[], least: number): readonly Span[] {
  const spans: Span[] = [];
  let to = 0;
  for (const [i, start] of samples.entries()) {
    to = Math.max(to, i + 1);
    while (to < samples.length && Math.abs((samples[to]?.position ?? 0) - start.position) < least) to++;
    const end = samples[to];
    if (!end) break;
    const seconds = (end.at - start.at) / 1000;
    if (seconds > 0) spans.push({ speed: (end.position - start.position) / seconds, seconds });
  }
  const [first, last] = [samples[0], samples.at(-1)];
  if (spans.length > 0 || !first || !last || last.at <= first.at) return spans;
  const seconds = (last.at - first.at) / 1000;
  return [{ speed: (last.position - first.position) / seconds, seconds }];
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[sorted.length / 2 - 1] ?? 0) + upper) / 2;
}

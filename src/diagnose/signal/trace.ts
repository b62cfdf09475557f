import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Trace, TraceLabel, TracePoint } from '../../model/verdict.ts';
import { changes } from './excursion.ts';
import { type Sample, sameState, statuses, track } from './track.ts';

/** How much of the quiet around the first and the last change is cited with them. */
const margin = ms(300);

/**
 * The cited readings of a window, reduced to what a drawing needs: each input's first and last sample and both sides of every
 * change, so that between "still old" and "already new" the doubt can be drawn too. Controller clock, from the first point.
 */
export function traceOf(window: Window, label: TraceLabel, inputs: readonly InputName[]): Trace {
  const tracks = inputs.map((input) => ({ input, samples: track(window, input) }));
  const span = citedSpan(
    window,
    tracks.map((each) => each.samples),
  );
  const cited = tracks.map(({ input, samples }) => ({
    input,
    samples: samples.filter((each) => within(each, span)),
  }));
  const origin = Math.min(...cited.flatMap(({ samples }) => samples[0]?.at ?? []));
  return {
    label,
    from: span.from,
    to: span.to,
    samples: statuses(window).filter((each) => within(each, span)).length,
    signals: cited
      .filter(({ samples }) => samples.length > 0)
      .map(({ input, samples }) => ({ input, points: points(samples, origin) })),
  };
}

interface Span {
  readonly from: Millis;
  readonly to: Millis;
}

const within = ({ arrived }: { readonly arrived: Millis }, { from, to }: Span): boolean =>
  arrived >= from && arrived <= to;

/** From a little before the first change to a little after the last; the whole window where nothing changed. */
function citedSpan(window: Window, tracks: readonly (readonly Sample[])[]): Span {
  const edges = tracks.flatMap((samples) => changes(samples).map((edge) => edge.arrived));
  const start = window.lead?.arrived ?? window.from;
  if (edges.length === 0) return { from: start, to: window.to };
  const firstEdge = edges.reduce((least, edge) => Math.min(least, edge), Infinity);
  const lastEdge = edges.reduce((most, edge) => Math.max(most, edge), -Infinity);
  const neighbour = tracks.flatMap((samples) => samples.filter((each) => each.arrived < firstEdge).slice(-1));
  const before = Math.min(firstEdge - margin, ...neighbour.map((each) => each.arrived));
  return { from: ms(Math.max(start, before)), to: ms(Math.min(window.to, lastEdge + margin)) };
}

function points(samples: readonly Sample[], origin: number): readonly TracePoint[] {
  const kept = samples.filter((sample, i) => {
    const before = samples[i - 1];
    const after = samples[i + 1];
    return !before || !after || !sameState(before, sample) || !sameState(sample, after);
  });
  return kept.map(({ at, level, active }) => ({
    t: ms(Math.round((at - origin) * 1000) / 1000),
    level,
    active,
  }));
}

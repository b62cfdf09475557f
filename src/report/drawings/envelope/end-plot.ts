import { scaleLinear } from 'd3-scale';
import type { EnvelopeFacts } from '../../../model/envelope-facts.ts';
import type { End } from '../../../model/machine.ts';
import { envelopeLabels } from '../../../words/motion/envelope-words.ts';
import { stacked, textWidth } from '../stacked.ts';

/** One end of an axis to scale, left to right as its coordinate counts, in units of the drawing. */
export interface EndPlot {
  readonly from: number;
  readonly to: number;
  readonly base: number;
  readonly items: readonly EndItem[];
  readonly spans: readonly EndSpan[];
  /** Where solid metal begins and on which side of it. */
  readonly metal?: { readonly from: number; readonly to: number } | undefined;
  readonly ruler?: { readonly from: number; readonly to: number; readonly length: number } | undefined;
  readonly bottom: number;
}

export interface EndItem {
  readonly kind: 'stop' | 'trip' | 'soft' | 'home';
  readonly x: number;
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
}

/** A length that is needed or used, above the line. */
export interface EndSpan {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly label: string;
  readonly labelX: number;
}

const fontSize = 11;
const rowHeight = 15;
/** Room left at either side of what is drawn, as a share of it. */
const spare = 0.14;

const cut = (value: number): number => Math.round(value * 100) / 100;

export function endPlot(
  facts: EnvelopeFacts,
  end: End,
  place: { readonly from: number; readonly to: number; readonly base: number },
): EndPlot {
  const { from, to, base } = place;
  const outward = end === 'positive' ? 1 : -1;
  const known = itemsOf(facts, end);
  const lengths = spansOf(facts, end, outward);
  const all = [...known.map(({ at }) => at), ...lengths.flatMap((each) => [each.from, each.to])];
  if (known.length === 0) return { from, to, base, items: [], spans: [], bottom: base + rowHeight };
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max((high - low) * spare, 0.5);
  const scale = scaleLinear([low - room, high + room], [from, to]);
  const x = (at: number) => cut(scale(at));
  const sorted = [...known].sort((one, other) => one.at - other.at);
  const labels = stacked(
    sorted.map(({ at, label }) => ({ x: x(at), width: textWidth(label, fontSize) })),
    { from, to },
  );
  const rows = Math.max(...labels.map(({ row }) => row)) + 1;
  const stop = facts.ends[end].stop;
  return {
    from,
    to,
    base,
    items: sorted.map(({ kind, at, label }, i) => ({
      kind,
      x: x(at),
      label,
      labelX: labels[i]?.x ?? x(at),
      labelY: base + 24 + (labels[i]?.row ?? 0) * rowHeight,
    })),
    spans: lengths.map((each, i) => spanOf(each, i, x, place)),
    metal: stop === undefined ? undefined : outward === 1 ? { from: x(stop), to } : { from, to: x(stop) },
    ruler: rulerOf(scale, from),
    bottom: base + 24 + rows * rowHeight,
  };
}

interface Known {
  readonly kind: EndItem['kind'];
  readonly at: number;
  readonly label: string;
}

function itemsOf(facts: EnvelopeFacts, end: End): readonly Known[] {
  const { stop, trip, input } = facts.ends[end];
  const soft = facts.soft?.[end === 'positive' ? 1 : 0];
  const home = facts.homes === end ? facts.homeValue : undefined;
  return [
    ...(stop === undefined ? [] : [{ kind: 'stop', at: stop, label: envelopeLabels.stop(stop) } as const]),
    ...(trip === undefined
      ? []
      : [{ kind: 'trip', at: trip, label: envelopeLabels.trip(trip, input) } as const]),
    ...(soft === undefined ? [] : [{ kind: 'soft', at: soft, label: envelopeLabels.soft(soft) } as const]),
    ...(home === undefined ? [] : [{ kind: 'home', at: home, label: envelopeLabels.home(home) } as const]),
  ];
}

interface Length {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

function spansOf(facts: EnvelopeFacts, end: End, outward: 1 | -1): readonly Length[] {
  const { trip } = facts.ends[end];
  if (trip === undefined) return [];
  const { softMargin, roomNeeded, backOff } = facts;
  return [
    { from: trip, to: trip - outward * softMargin, label: envelopeLabels.margin(softMargin) },
    ...(facts.homes === end && backOff !== undefined
      ? [{ from: trip, to: trip - outward * backOff, label: envelopeLabels.backOff(backOff) }]
      : []),
    ...(roomNeeded === undefined
      ? []
      : [{ from: trip, to: trip + outward * roomNeeded, label: envelopeLabels.room(roomNeeded) }]),
  ];
}

function spanOf(
  length: Length,
  at: number,
  x: (at: number) => number,
  { from, to, base }: { readonly from: number; readonly to: number; readonly base: number },
): EndSpan {
  const [label] = stacked(
    [{ x: (x(length.from) + x(length.to)) / 2, width: textWidth(length.label, fontSize) }],
    { from, to },
  );
  return {
    from: x(length.from),
    to: x(length.to),
    y: base - 26 - at * 25,
    label: length.label,
    labelX: label?.x ?? from,
  };
}

/** A round length near a fifth of the drawing, for whoever lays a ruler beside it. */
function rulerOf(scale: ReturnType<typeof scaleLinear<number, number>>, from: number): EndPlot['ruler'] {
  const [first, second] = scale.ticks(5);
  if (first === undefined || second === undefined) return undefined;
  return { from, to: cut(from + Math.abs(scale(second) - scale(first))), length: cut(second - first) };
}

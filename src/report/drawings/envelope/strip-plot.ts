import { scaleLinear } from 'd3-scale';
import type { EnvelopeFacts } from '../../../model/envelope-facts.ts';
import { stacked, textWidth } from '../stacked.ts';

/** A whole axis in one strip: what bounds it, where the work lies, what a program needs. */
export interface StripPlot {
  readonly from: number;
  readonly to: number;
  readonly base: number;
  readonly soft?: { readonly from: number; readonly to: number } | undefined;
  readonly stops: readonly number[];
  readonly trips: readonly number[];
  readonly home?: number | undefined;
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly origins: readonly {
    readonly x: number;
    readonly label: string;
    readonly labelX: number;
    readonly labelY: number;
  }[];
  readonly parts: readonly StripPart[];
  readonly bottom: number;
}

/** A bar; what lies outside the bounds of the axis is drawn apart. */
export interface StripPart {
  readonly y: number;
  readonly from: number;
  readonly to: number;
  readonly outside: readonly { readonly from: number; readonly to: number }[];
  readonly label: string;
}

const fontSize = 11;
const rowHeight = 15;
const partHeight = 32;
const top = 14;
const cut = (value: number): number => Math.round(value * 100) / 100;

export function stripPlot(facts: EnvelopeFacts, from: number, to: number): StripPlot {
  const { soft, homeValue, origins, parts, ends } = facts;
  const known = (values: readonly (number | undefined)[]) => values.filter((each) => each !== undefined);
  const stops = known([ends.negative.stop, ends.positive.stop]);
  const trips = known([ends.negative.trip, ends.positive.trip]);
  const all = [
    ...stops,
    ...trips,
    ...known([soft?.[0], soft?.[1], homeValue]),
    ...origins.map(({ at }) => at as number),
    ...parts.flatMap(({ low, high }) => [low as number, high as number]),
  ];
  const [low, high] = all.length === 0 ? [0, 1] : [Math.min(...all), Math.max(...all)];
  const room = Math.max((high - low) * 0.03, 0.5);
  const scale = scaleLinear([low - room, high + room], [from, to]);
  const x = (at: number) => cut(scale(at));
  const labels = origins.map(({ system, active }) => (active ? `${system}, active` : system));
  const sorted = origins
    .map(({ at }, i) => ({ at, label: labels[i] ?? '' }))
    .sort((one, other) => one.at - other.at);
  const places = stacked(
    sorted.map(({ at, label }) => ({ x: x(at), width: textWidth(label, fontSize) })),
    { from, to },
  );
  const rows = places.length === 0 ? 0 : Math.max(...places.map(({ row }) => row)) + 1;
  const base = top + rows * rowHeight + 14;
  const partsFrom = base + 42;
  return {
    from,
    to,
    base,
    soft: soft && { from: x(soft[0]), to: x(soft[1]) },
    stops: stops.map(x),
    trips: trips.map(x),
    home: homeValue === undefined ? undefined : x(homeValue),
    ticks: scale.ticks(8).map((at) => ({ x: x(at), label: `${at}`.replace('-', '−') })),
    origins: sorted.map(({ at, label }, i) => ({
      x: x(at),
      label,
      labelX: places[i]?.x ?? x(at),
      labelY: base - 18 - (places[i]?.row ?? 0) * rowHeight,
    })),
    parts: parts.map((part, i) => ({
      y: partsFrom + i * partHeight,
      from: x(part.low),
      to: x(part.high),
      outside: outsideOf(part, facts).map((each) => ({ from: x(each.from), to: x(each.to) })),
      label: `program in ${part.system}`,
    })),
    bottom: partsFrom + parts.length * partHeight,
  };
}

/** Beyond the soft limits, else beyond the switches, else beyond metal. */
function outsideOf(
  { low, high }: EnvelopeFacts['parts'][number],
  { soft, ends }: EnvelopeFacts,
): readonly { readonly from: number; readonly to: number }[] {
  const least = soft?.[0] ?? ends.negative.trip ?? ends.negative.stop;
  const most = soft?.[1] ?? ends.positive.trip ?? ends.positive.stop;
  return [
    ...(least !== undefined && low < least ? [{ from: low, to: Math.min(high, least) }] : []),
    ...(most !== undefined && high > most ? [{ from: Math.max(low, most), to: high }] : []),
  ];
}

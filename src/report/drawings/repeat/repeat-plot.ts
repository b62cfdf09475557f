import { scaleLinear } from 'd3-scale';
import type { RepeatFacts } from '../../../model/repeat-facts.ts';

/** Trip places run by run, as deviations from their mean. */
export interface RepeatPlot {
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly up: readonly { readonly y: number; readonly label: string }[];
  readonly mean: number;
  /** The accepted span, laid around the middle of what was seen. */
  readonly tolerance: { readonly top: number; readonly bottom: number };
  readonly runs: readonly {
    readonly number: number;
    readonly x: number;
    readonly top: number;
    readonly bottom: number;
    readonly outlier: boolean;
  }[];
}

const box = { left: 58, right: 628, top: 12, bottom: 176 } as const;
const cut = (value: number): number => Math.round(value * 100) / 100;

export function repeatPlot({ runs, mean, tolerance, least, most, outlier }: RepeatPlotOf): RepeatPlot {
  const places = runs.map(({ place, gauge }) => (gauge === undefined ? place : { low: gauge, high: gauge }));
  const middle = (least + most) / 2 - mean;
  const deviations = places.flatMap(({ low, high }) => [low - mean, high - mean]);
  const edges = [...deviations, middle - tolerance / 2, middle + tolerance / 2, 0];
  const [low, high] = [Math.min(...edges), Math.max(...edges)];
  const room = (high - low) * 0.06 || 0.001;
  const scale = scaleLinear([low - room, high + room], [box.bottom, box.top]);
  const y = (at: number) => cut(scale(at));
  const step = (box.right - box.left) / Math.max(runs.length, 1);
  return {
    box,
    up: scale.ticks(5).map((at) => ({ y: y(at), label: tickText(at) })),
    mean: y(0),
    tolerance: { top: y(middle + tolerance / 2), bottom: y(middle - tolerance / 2) },
    runs: places.map((place, i) => ({
      number: i + 1,
      x: cut(box.left + step * (i + 0.5)),
      top: y(place.high - mean),
      bottom: y(place.low - mean),
      outlier: outlier?.index === i,
    })),
  };
}

type RepeatPlotOf = Pick<RepeatFacts, 'runs' | 'mean' | 'tolerance' | 'outlier'> & {
  readonly least: number;
  readonly most: number;
};

/** What was seen, from the middle of the lowest place to that of the highest. */
export function extremesOf({ runs }: Pick<RepeatFacts, 'runs'>): { least: number; most: number } {
  const middles = runs.map(({ place, gauge }) => gauge ?? (place.low + place.high) / 2);
  return middles.length === 0
    ? { least: 0, most: 0 }
    : { least: Math.min(...middles), most: Math.max(...middles) };
}

/** d3's ticks carry the rounding of binary fractions. */
const tickText = (at: number): string => `${Number(at.toPrecision(6))}`.replace('-', '−');

import { oppositeSide, type Side } from '../../../model/machine.ts';
import type { AxisWay } from '../../../model/motion-facts.ts';
import type { ReportRecord } from '../../record.ts';

export type SketchAxis = ReportRecord['machine']['axes'][number];

/** What the coordinate sketch is drawn from: the axes as declared, and where they really go as far as that was seen. */
export interface SketchOf {
  readonly axes: readonly SketchAxis[];
  readonly ways: readonly AxisWay[];
}

/** One arrow: which positive command, and to which side of the machine. */
export interface PlanArrow {
  readonly axis: string;
  readonly side: Side;
  readonly kind: 'declared' | 'seen' | 'really';
}

export interface Plan {
  readonly arrows: readonly PlanArrow[];
  /** The sides at which the axes stand after homing, across, along, up. */
  readonly home: readonly Side[];
}

const sides = Object.keys(oppositeSide) as readonly Side[];

/** A record's text as a side; a record read from a file may hold anything. */
const sideOf = (text: string | undefined): Side | undefined => sides.find((each) => each === text);

/** Arrows and home corner, seen from above by whoever stands where the machine file says. */
export function planOf({ axes, ways }: SketchOf): Plan {
  const positive = (letter: string) => sideOf(axes.find((each) => each.letter === letter)?.positive);
  const really = (letter: string): Side | undefined => {
    const way = ways.find(({ commanded }) => commanded === letter);
    const side = way && positive(way.axis);
    return side && way.sign === -1 ? oppositeSide[side] : side;
  };
  const arrows = axes.flatMap(({ letter }): readonly PlanArrow[] => {
    const [declared, seen] = [positive(letter), really(letter)];
    if (declared !== undefined && declared === seen) return [{ axis: letter, side: declared, kind: 'seen' }];
    return [
      ...(declared === undefined ? [] : [{ axis: letter, side: declared, kind: 'declared' } as const]),
      ...(seen === undefined ? [] : [{ axis: letter, side: seen, kind: 'really' } as const]),
    ];
  });
  const home = axes.flatMap(({ letter, homes }): readonly Side[] => {
    const side = really(letter) ?? positive(letter);
    if (side === undefined || (homes !== 'negative' && homes !== 'positive')) return [];
    return [homes === 'positive' ? side : oppositeSide[side]];
  });
  return { arrows, home: [...home].sort((one, other) => sides.indexOf(one) - sides.indexOf(other)) };
}

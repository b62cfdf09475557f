import { mm } from '../../model/units.ts';
import type { EnvelopeIssue } from './issue.ts';
import { type AxisLayout, outwards } from './layout.ts';

/** 25.4 as read off a ratio of typed lengths: the margins left out of one of them cost a few hundredths. */
const inch = { ratio: 25.4, within: 0.05 };

/**
 * Mistakes of typing that turn a whole soft range: the sign lost (an axis that homes to its positive end at 0 counts down from there, so its range is
 * negative, and the other way round), inches typed as millimetres, more than there is travel.
 */
export function signIssues(layout: AxisLayout): readonly EnvelopeIssue[] {
  const { letter: axis, homes, homeValue, soft } = layout;
  if (!soft) return [];
  const [low, high] = soft;
  const span = high - low;
  const room = travelOf(layout);
  const factor = room === undefined || span === 0 ? 1 : span / room;
  if (isInch(factor) || isInch(1 / factor))
    return [{ kind: 'soft-inches-as-mm', axis, by: mm(Math.abs(span - (room ?? 0))) }];
  if (homes !== undefined && homeValue !== undefined) {
    const beyond = ((low + high) / 2 - homeValue) * outwards(homes);
    if (beyond > 0) {
      const outer = homes === 'positive' ? high : low;
      const to = mm(2 * homeValue - outer);
      const by = mm((outer - homeValue) * outwards(homes));
      return [
        { kind: 'soft-wrong-sign', axis, end: homes, by, change: { what: 'soft limit', from: outer, to } },
      ];
    }
  }
  return room !== undefined && span > room + 0.005
    ? [{ kind: 'soft-wider-than-travel', axis, by: mm(span - room) }]
    : [];
}

/** From trip to trip, else what the file calls the travel. */
function travelOf({ ends: { negative, positive }, travel }: AxisLayout): number | undefined {
  if (negative.trip !== undefined && positive.trip !== undefined) return positive.trip - negative.trip;
  return travel;
}

const isInch = (factor: number): boolean => Math.abs(factor / inch.ratio - 1) <= inch.within;

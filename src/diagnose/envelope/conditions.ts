import type { End } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { EnvelopeIssue } from './issue.ts';
import {
  type AxisLayout,
  backOffNeeded,
  ends,
  inwards,
  outwards,
  roomNeeded,
  softMargin,
  usableTravel,
} from './layout.ts';
import { signIssues } from './signs.ts';

/** Numbers typed to the hundredth do not break a condition by their rounding, mm. */
const rounding = 0.005;

/**
 * Everything that does not hold along one axis, from the outside in: hard stop, room to stop, trip, back-off, machine zero, margin, soft limit. A condition
 * whose numbers are not all known is not judged. Where the soft range is on the wrong side altogether, its ends are not judged one by one.
 */
export function envelopeIssues(layout: AxisLayout): readonly EnvelopeIssue[] {
  const wrongSign = signIssues(layout);
  const softEnds = wrongSign.some(({ kind }) => kind === 'soft-wrong-sign' || kind === 'soft-inches-as-mm')
    ? []
    : ends.flatMap((end) => softIssues(layout, end));
  return [
    ...wrongSign,
    ...softEnds,
    ...ends.flatMap((end) => stopIssues(layout, end)),
    ...homeIssues(layout),
  ];
}

function softIssues(layout: AxisLayout, end: End): readonly EnvelopeIssue[] {
  const { letter: axis, soft } = layout;
  const { trip, stop } = layout.ends[end];
  const at = soft?.[end === 'positive' ? 1 : 0];
  if (at === undefined) return [];
  const margin = softMargin(layout);
  const bound = trip ?? stop;
  if (bound === undefined) return [];
  const inside = (bound - at) * outwards(end);
  if (inside >= margin - rounding) return [];
  const change = { what: 'soft limit', from: at, to: mm(bound + inwards(end) * margin) } as const;
  if (trip === undefined) return [{ kind: 'soft-outside-stop', axis, end, by: mm(margin - inside), change }];
  return inside < 0
    ? [{ kind: 'soft-outside-switch', axis, end, by: mm(-inside), change }]
    : [{ kind: 'soft-too-near-switch', axis, end, by: mm(margin - inside), change }];
}

function stopIssues(layout: AxisLayout, end: End): readonly EnvelopeIssue[] {
  const { letter: axis } = layout;
  const { trip, stop } = layout.ends[end];
  if (trip === undefined || stop === undefined) return [];
  const room = (stop - trip) * outwards(end);
  if (room < -rounding) return [{ kind: 'switch-behind-stop', axis, end, by: mm(-room) }];
  const needed = roomNeeded(layout);
  if (needed === undefined || room >= needed - rounding) return [];
  return [{ kind: 'little-room-to-stop', axis, end, by: mm(needed - room) }];
}

function homeIssues(layout: AxisLayout): readonly EnvelopeIssue[] {
  const { letter: axis, homes, homeValue, backOff, soft } = layout;
  const issues: EnvelopeIssue[] = [];
  const needed = backOffNeeded(layout);
  if (backOff !== undefined && backOff < needed - rounding)
    issues.push({
      kind: 'back-off-too-small',
      axis,
      by: mm(needed - backOff),
      change: { what: 'back-off', from: backOff, to: needed },
    });
  const usable = usableTravel(layout);
  if (backOff !== undefined && usable !== undefined && backOff > usable)
    issues.push({
      kind: 'back-off-too-large',
      axis,
      by: mm(backOff - usable),
      change: { what: 'back-off', from: backOff, to: needed },
    });
  if (homes === undefined || homeValue === undefined) return issues;
  const trip = layout.ends[homes].trip;
  if (trip !== undefined && backOff !== undefined)
    issues.push(...zeroIssues(layout, homes, trip, homeValue, backOff));
  const limit = soft?.[homes === 'positive' ? 1 : 0];
  const outside = limit === undefined ? 0 : (homeValue - limit) * outwards(homes);
  if (outside > rounding && !signIssues(layout).length)
    issues.push({ kind: 'home-outside-soft', axis, end: homes, by: mm(outside) });
  return issues;
}

/** Home is where the axis stands when it has backed off from its trip: the home value belongs there. */
function zeroIssues(
  layout: AxisLayout,
  end: End,
  trip: Mm,
  homeValue: Mm,
  backOff: Mm,
): readonly EnvelopeIssue[] {
  const stands = trip + inwards(end) * backOff;
  const apart = Math.abs(homeValue - stands);
  const tolerated = Math.max(0.5, layout.homeSpan ?? 0);
  if (apart <= tolerated) return [];
  return [
    {
      kind: 'zero-not-at-home',
      axis: layout.letter,
      end,
      by: mm(apart),
      change: { what: 'home value', from: homeValue, to: mm(stands) },
    },
  ];
}

import type { Axis, AxisLetter } from '../../model/machine.ts';
import type { Millis } from '../../model/units.ts';
import type { Motion } from '../motion/motion.ts';
import type { HomingCycle } from './cycle.ts';

/** One axis of a homing of them all. */
export interface AxisHoming {
  readonly axis: Axis;
  readonly motion: Motion;
  readonly cycle: HomingCycle;
}

export type OrderIssue =
  /** `axis` set off before Z had found its top: tool and clamps may meet. */
  | { readonly kind: 'before-z-is-up'; readonly axis: AxisLetter }
  /** The file says that `axis` homes after `before`, which came later. */
  | { readonly kind: 'unlike-declared'; readonly axis: AxisLetter; readonly before: AxisLetter };

/** The axes in the order in which they set off, controller clock. Those that never moved are left out. */
export function orderSeen(
  homings: readonly AxisHoming[],
): readonly { readonly axis: AxisLetter; readonly at: Millis }[] {
  return homings
    .flatMap(({ axis, motion }) => {
      const first = motion.runs.find(({ kind }) => kind === 'moving');
      const at = first && motion.samples[first.from]?.at;
      return at === undefined ? [] : [{ axis: axis.letter, at }];
    })
    .sort((a, b) => a.at - b.at);
}

/**
 * Where axes set off too early: across the work before Z is up, on machines whose Z homes to its top (common practice, no source), or unlike the order the file
 * tells. Axes told the same place may go together.
 */
export function orderIssues(homings: readonly AxisHoming[]): readonly OrderIssue[] {
  const seen = orderSeen(homings);
  const z = homings.find(({ axis }) => axis.letter === 'Z' && axis.homes === 'positive');
  const up = z && upAt(z.cycle);
  const early =
    z && seen.some(({ axis }) => axis === 'Z')
      ? seen.filter(({ axis, at }) => (axis === 'X' || axis === 'Y') && (up === undefined || at < up))
      : [];
  return [
    ...early.map(({ axis }) => ({ kind: 'before-z-is-up', axis }) as const),
    ...unlikeDeclared(homings, seen),
  ];
}

/** When it had found its switch: at the trip, or, where that fell between two reports, when it turned. */
function upAt({ trip, approach, backOff }: HomingCycle): Millis | undefined {
  return trip?.at.high ?? (backOff && approach?.at.high);
}

function unlikeDeclared(
  homings: readonly AxisHoming[],
  seen: ReturnType<typeof orderSeen>,
): readonly OrderIssue[] {
  const told = (letter: AxisLetter) => homings.find(({ axis }) => axis.letter === letter)?.axis.homeOrder;
  return seen.flatMap(({ axis }, i) =>
    seen.slice(i + 1).flatMap(({ axis: later }) => {
      const [first, second] = [told(axis), told(later)];
      if (first === undefined || second === undefined || second >= first) return [];
      return [{ kind: 'unlike-declared', axis, before: later } as const];
    }),
  );
}

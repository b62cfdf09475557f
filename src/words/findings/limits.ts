import type { LimitChange, LimitFact, LimitIssue, LimitKind } from '../../model/limits-finding.ts';
import type { Machine } from '../../model/machine.ts';
import { lengthText } from '../motion/lengths.ts';
import type { Change, FindingEntry } from './entry.ts';

/** Where, how much: what each issue says of the case at hand. */
const said = {
  'soft-outside-switch': (at, by) =>
    `the soft limit at ${at} lies ${by} past the switch, so the switch trips first.`,
  'soft-too-near-switch': (at, by) =>
    `the soft limit at ${at} is ${by} nearer to the switch than its release and the wander of home need.`,
  'soft-outside-stop': (at, by) => `the soft limit at ${at} is ${by} too near to the hard stop, or past it.`,
  'little-room-to-stop': (at, by) =>
    `at ${at}, from the trip to metal is ${by} less than a stop from rapid takes.`,
  'switch-behind-stop': (at, by) =>
    `at ${at} the switch would trip ${by} past the hard stop: it is never reached.`,
  'back-off-too-small': (at, by) => `the back-off of ${at} is ${by} too small to be sure off the switch.`,
  'back-off-too-large': (at, by) =>
    `the back-off of ${at} is ${by} larger than the way between its switches.`,
  'home-outside-soft': (at, by) => `after homing ${at} stands ${by} outside its own soft limits.`,
  'zero-not-at-home': (at, by) =>
    `the home value of ${at} is ${by} from where the axis stands when it has backed off.`,
  'soft-wrong-sign': (at, by) =>
    `the soft range of ${at} lies on the outer side of home, by ${by}: a sign is wrong.`,
  'soft-wider-than-travel': (at, by) => `the soft range of ${at} is ${by} wider than its travel.`,
  'soft-inches-as-mm': (at) =>
    `the soft range and the travel of ${at} differ by about 25.4: one of them was typed in the other unit.`,
  'outside-soft-limits': (at, by) => `the program goes ${by} past the limit at ${at}.`,
  'box-too-large': (at, by) => `the program needs ${by} more along ${at} than there is.`,
  'first-retract-too-high': (at, by) => `the first retract goes ${by} over the top limit of ${at}.`,
  'offset-still-zero': (at, by) =>
    `the work zero of ${at} was never set: the work would lie at the switch, up to ${by} from where it is.`,
  'offset-inches-as-mm': (at) =>
    `the work offset of ${at} fits if it is read in inches: it was typed in the other unit.`,
  'temporary-shift-active': (at, by) => `a temporary shift (G92) of ${by} is left over on ${at}.`,
  'other-system-set': (at) => `another coordinate system than the one in use was set, to be seen on ${at}.`,
} satisfies Record<LimitIssue, (at: string, by: string) => string>;

const isRotary = (machine: Machine, axis: string): boolean =>
  machine.axes.some(({ letter, kind }) => letter === axis && kind === 'rotary');

function sentence(fact: LimitFact, machine: Machine): string {
  const unit = isRotary(machine, fact.axis) ? 'degrees' : 'mm';
  const at = fact.end === undefined ? fact.axis : `the ${fact.end} end of ${fact.axis}`;
  const where = [
    ...(fact.system === undefined || fact.system === 'active' ? [] : [`in ${fact.system}`]),
    ...(fact.line === undefined ? [] : [`line ${fact.line} of the program`]),
  ].join(', ');
  const text = said[fact.issue](at, lengthText(fact.by, unit));
  return where === '' ? text : `${text.slice(0, -1)} (${where}).`;
}

function changeOf(fact: LimitFact, machine: Machine): readonly Change[] {
  if (!fact.change) return [];
  const unit = isRotary(machine, fact.axis) ? 'degrees' : 'mm';
  const { what, from, to }: LimitChange = fact.change;
  const name = `${what} of ${fact.axis}${fact.end === undefined ? '' : `, ${fact.end} end`}`;
  return [
    {
      what: 'setting',
      from: `${name}: ${from === undefined ? 'not known' : lengthText(from, unit)}`,
      to: `${name}: ${lengthText(to, unit)}`,
      why: sentence(fact, machine),
      retest: `envelope of ${fact.axis}`,
    },
  ];
}

const entry = <Kind extends LimitKind>(
  words: Pick<FindingEntry<Kind>, 'title' | 'means' | 'next'>,
): FindingEntry<Kind> => ({
  ...words,
  said: (fact, { machine }) => sentence(fact as unknown as LimitFact, machine),
  change: (fact, { machine }) => changeOf(fact as unknown as LimitFact, machine),
});

export const softLimitsOutside = entry<'soft-limits-outside'>({
  title: 'A soft limit lies outside the switch, or too near to it',
  means:
    'A soft limit has to stop a move before the switch does. Where it lies past the switch, or nearer to it than the switch frees again and home wanders, ordinary work trips the limit switch and the machine halts.',
  next: [
    'Set the soft limit to the number that is given.',
    'Home again and look whether the numbers still hold.',
  ],
});
export const softLimitsMistyped = entry<'soft-limits-mistyped'>({
  title: 'The soft limits look mistyped',
  means:
    'The whole range lies where the axis cannot go: on the outer side of home, or wider than the travel, or 25.4 times off. An axis that homes to its positive end at zero counts down from there, so its range is negative; a lost sign puts it outside. Nothing then bounds the moves.',
  next: [
    'Compare the sign and the unit of both soft limits with where home lies.',
    'Home, move a little inwards and look which way the position counts.',
  ],
});
export const littleRoomToStop = entry<'little-room-to-stop'>({
  title: 'Too little room to stop between switch and metal',
  means:
    'From rapid, the axis needs a longer stopping distance than lies between the trip of its switch and the hard stop: it would hit metal. Stopping distance goes with the square of speed, so that half the speed needs about a quarter.',
  next: [
    'Lower the speed at which this end may be met, or move the switch inwards.',
    'Rely on the soft limit before the switch for fast moves.',
  ],
});
export const switchBehindStop = entry<'switch-behind-stop'>({
  title: 'The switch lies behind the hard stop',
  means: 'The axis meets metal before its switch trips. A seek to this end never ends by the switch.',
  next: [
    'Move the switch or its dog inwards until it trips before the metal.',
    'Measure both places again from the same mark.',
  ],
});
export const backOffUnfit = entry<'back-off-unfit'>({
  title: 'The back-off does not fit',
  means:
    'After its trip an axis backs off until the switch is sure to be free again: more than the way between trip and release, and less than what would reach the switch at the other end. Too little leaves the switch operated, and the next homing starts on it.',
  next: [
    'Set the back-off to the number that is given.',
    'Watch a homing again: the switch must be free when it ends.',
  ],
});
export const homeOutsideSoft = entry<'home-outside-soft'>({
  title: 'Home lies outside the soft limits',
  means:
    'Where the axis stands after homing is outside the range it may work in. Controllers differ: some refuse the first move from there, some let it go inwards.',
  next: [
    'Look whether the controller lets the first move go inwards.',
    'If not, widen the soft limit to home, or let the back-off end inside it.',
  ],
});
export const zeroNotAtHome = entry<'zero-not-at-home'>({
  title: 'Home value, trip and back-off do not fit together',
  means:
    'The number set at the end of homing, the place of the trip and the back-off tell three things of which one is wrong: the axis stands elsewhere than its number says, and everything counted from there is off by that much. Parts still come out right, since work is touched off; soft limits do not.',
  next: [
    'Measure where the axis stands after homing, from the hard stop.',
    'Correct the home value, or the place of the switch in the machine file.',
  ],
});
export const outsideSoftLimits = entry<'outside-soft-limits'>({
  title: 'The program leaves the soft limits',
  means:
    'Put where its coordinate system puts it, a part of the program lies outside the range of the axis. It would stop half-way at the soft limit, or at the switch where there is none.',
  next: [
    'Check the work zero that was told, and the tool length.',
    'Move the work, or change the offset by the amount that is given; where the part is larger than the room it does not fit at all.',
  ],
});
export const workOffsetDoubtful = entry<'work-offset-doubtful'>({
  title: 'A work offset looks wrong',
  means:
    'A work zero that was never set, was set in another coordinate system than the one in use, was typed in the other unit, or is shifted by a forgotten temporary shift moves the whole program. The first plunge then goes where nobody looked.',
  next: [
    'Touch off again in the coordinate system that the program uses.',
    'Cancel the temporary shift (G92.1 in RS-274) unless it is meant.',
  ],
});

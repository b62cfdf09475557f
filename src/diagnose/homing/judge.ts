import type { Mm } from '../../model/units.ts';
import { exactly, type Interval, widthOf } from '../motion/interval.ts';
import type { Direction } from '../motion/runs.ts';
import type { Speed } from '../motion/speed.ts';
import type { HomingCycle } from './cycle.ts';

/** The numbers of one homing; what was not seen is undefined. Speeds mm/s without sign, lengths mm. */
export interface HomingFigures {
  readonly way: Direction | undefined;
  readonly approachSpeed: Speed | undefined;
  readonly slowSpeed: Speed | undefined;
  /** mm/s², both ramps of the approach taken to be alike. */
  readonly acceleration: Interval | undefined;
  readonly approachWay: Interval<Mm> | undefined;
  readonly trip: Interval<Mm> | undefined;
  readonly slowTrip: Interval<Mm> | undefined;
  readonly stopDistance: Interval<Mm> | undefined;
  readonly backOff: Interval<Mm> | undefined;
  readonly release: Interval<Mm> | undefined;
  /** Trip to release of the switch, from the slow trip and the release after it where both were seen. */
  readonly differential: Interval<Mm> | undefined;
  /** What the zero shifted the numbers by: lost steps and the wander of the switch since the last homing. */
  readonly shift: Interval<Mm> | undefined;
}

export type HomingIssueKind =
  | 'pressed-at-start'
  | 'no-trip'
  | 'inferred-trip'
  | 'no-reversal'
  | 'does-not-clear'
  | 'slow-trip-missed'
  | 'slow-not-slower'
  | 'zeroed-in-place'
  | 'zero-not-set'
  | 'overruns'
  | 'ends-in-fault';

export interface HomingIssue {
  readonly kind: HomingIssueKind;
  /** Where a length is what is wrong, mm: how much too far. */
  readonly by?: Mm;
}

export interface HomingJudgement {
  readonly figures: HomingFigures;
  readonly issues: readonly HomingIssue[];
  /** Everything from approach to zero was seen. */
  readonly whole: boolean;
  /** The stream broke off, or the position stood still all the while: nothing follows. */
  readonly unseen: boolean;
}

/** What each homing shows by itself; repeatability needs several, direction needs more than the stream. */
export function judgeHoming(cycle: HomingCycle, overtravel?: Mm): HomingJudgement {
  const unseen = cycle.ends === 'gap' || cycle.start.position === undefined;
  const issues = unseen ? [] : issuesOf(cycle, overtravel);
  const whole =
    !unseen && cycle.trip !== undefined && cycle.clear !== undefined && cycle.zero.kind !== 'not-seen';
  return { figures: figuresOf(cycle), issues, whole, unseen };
}

function issuesOf(cycle: HomingCycle, overtravel: Mm | undefined): readonly HomingIssue[] {
  const { approach, trip, backOff, clear, zero, slowApproach, slowTrip, freed } = cycle;
  const set = zero.kind !== 'not-seen';
  const issues: (HomingIssue | false)[] = [
    cycle.start.condition === 'operated' && { kind: 'pressed-at-start' },
    !approach && !freed && zero.kind === 'jump' && { kind: 'zeroed-in-place' },
    approach !== undefined && !trip && !(backOff && set) && { kind: 'no-trip' },
    approach !== undefined && !trip && backOff !== undefined && set && { kind: 'inferred-trip' },
    trip !== undefined && !backOff && { kind: 'no-reversal' },
    trip !== undefined && backOff !== undefined && !clear && { kind: 'does-not-clear' },
    clear !== undefined && slowApproach !== undefined && !slowTrip && { kind: 'slow-trip-missed' },
    isNotSlower(cycle) && { kind: 'slow-not-slower' },
    clear !== undefined && cycle.ends === 'still' && !set && { kind: 'zero-not-set' },
    cycle.ends === 'fault' && { kind: 'ends-in-fault' },
    overrun(cycle, overtravel),
  ];
  return issues.filter((issue) => issue !== false);
}

function isNotSlower({ approach, slowApproach, slowTrip }: HomingCycle): boolean {
  const [fast, slow] = [approach?.speed, slowApproach?.speed];
  if (!fast || !slow || !slowTrip) return false;
  return Math.abs(slow.value) - widthOf(slow) > Math.abs(fast.value);
}

function overrun({ stopDistance }: HomingCycle, overtravel: Mm | undefined): HomingIssue | false {
  if (!stopDistance || overtravel === undefined || stopDistance.low <= overtravel) return false;
  return { kind: 'overruns', by: (stopDistance.low - overtravel) as Mm };
}

function figuresOf(cycle: HomingCycle): HomingFigures {
  const { approach, slowApproach, zero, slowTrip, slowClear, trip, clear } = cycle;
  const [tripped, freed] = slowTrip && slowClear ? [slowTrip, slowClear] : [trip, clear];
  const [a, b] = [tripped?.where, freed?.where];
  return {
    way: approach?.direction,
    approachSpeed: unsigned(approach?.speed),
    slowSpeed: unsigned(slowApproach?.speed),
    acceleration: cycle.acceleration,
    approachWay: approach?.distance,
    trip: trip?.where,
    slowTrip: slowTrip?.where,
    stopDistance: cycle.stopDistance,
    backOff: cycle.backOff?.distance,
    release: cycle.release?.distance,
    differential: a && b && apart(a, b, approach?.direction ?? 1),
    shift: zero.kind === 'jump' ? zero.shift : zero.kind === 'agrees' ? exactly(0 as Mm) : undefined,
  };
}

/** How far inside its trip a switch frees: never below zero. */
function apart(trip: Interval<Mm>, free: Interval<Mm>, way: Direction): Interval<Mm> {
  const [low, high] =
    way === 1 ? [trip.low - free.high, trip.high - free.low] : [free.low - trip.high, free.high - trip.low];
  return { low: Math.max(0, low) as Mm, high: Math.max(0, high) as Mm };
}

function unsigned(speed: Speed | undefined): Speed | undefined {
  if (!speed || speed.value >= 0) return speed;
  return { value: -speed.value, low: -speed.high, high: -speed.low };
}

import type { InputName } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import { type Condition, conditionOf } from '../motion/edges.ts';
import { usualPeriod } from '../motion/jumps.ts';
import { movedUnseen } from '../motion/silences.ts';
import { stateIn } from '../signal/track.ts';
import type { Features } from './features.ts';
import { crawlShare, crawlSpeed, frozenFor, mayRunOn, shortestForSpeed, squaresWithin } from './limits.ts';
import type { SeekRoles } from './roles.ts';
import type { SeekRun } from './run.ts';
import { onSpindleAxis } from './situations/situation.ts';

/** What the stream alone shows of one run. A feature that could not be seen is absent. */
export function observeRun(run: SeekRun, roles: SeekRoles): Features {
  const { cycle } = run;
  const seen = wasSeen(run) ? 'whole' : 'gap';
  if (seen === 'gap') return { seen };
  const trip = tripOf(run, roles);
  return defined({
    seen,
    atStart: cycle.start.condition === 'unknown' ? undefined : cycle.start.condition,
    way: wayOf(run, roles),
    trip,
    after: trip === 'own' || trip === 'between-reports' ? afterOf(run, roles) : undefined,
    clear: clearOf(run),
    slow: slowOf(run),
    edges: cycle.trip && edgesOf(run, cycle.input) > 2 ? 'several' : 'clean',
    zero: zeroOf(run, roles),
    ends: cycle.ends === 'gap' ? undefined : cycle.ends,
    endedBy: run.strayTrips.some(({ input }) => roles.stops.includes(input)) ? 'stop-button' : 'itself',
    speed: speedOf(run, roles),
    ran: ranOf(run, roles),
    forWork: onSpindleAxis(roles) && cycle.approach?.direction === -1 ? 'yes' : 'no',
    elsewhere: elsewhereOf(run, roles),
    runOn: runOnOf(run, roles),
    sides: sidesOf(run),
  });
}

type Loose<T> = { readonly [K in keyof T]: T[K] | undefined };

/** Without the entries that hold nothing. */
export function defined<T extends object>(loose: Loose<T>): T {
  return Object.fromEntries(Object.entries(loose).filter(([, value]) => value !== undefined)) as T;
}

/** What moved in a silence, and positions that stood still while the controller said it was homing and then were others, were not reported. */
function wasSeen({ cycle, motion, window }: SeekRun): boolean {
  if (cycle.ends === 'gap' || motion.samples.length === 0 || movedUnseen(motion.samples)) return false;
  if (cycle.approach || cycle.freed || cycle.zero.kind !== 'jump') return true;
  const homing = window.readings.filter((each) => each.kind === 'status' && each.activity === 'homing');
  const [first, last] = [homing[0], homing.at(-1)];
  const lasted = first?.kind === 'status' && last?.kind === 'status' ? last.at - first.at : 0;
  return lasted < frozenFor;
}

function wayOf({ cycle }: SeekRun, { toward }: SeekRoles): Features['way'] {
  if (!cycle.approach && !cycle.freed) return 'none';
  if (!cycle.approach || toward === undefined) return undefined;
  return cycle.approach.direction === toward ? 'toward' : 'away';
}

function tripOf(run: SeekRun, roles: SeekRoles): Features['trip'] {
  const { cycle, strayTrips } = run;
  if (cycle.trip) return 'own';
  if (cycle.start.condition === 'operated' && !cycle.freed) return undefined;
  const { approach } = cycle;
  // Before it moved it worked nothing.
  const stray = strayTrips.find(
    ({ at, input }) => !roles.stops.includes(input) && approach && at.high >= approach.at.low,
  )?.input;
  if (stray !== undefined) {
    if (roles.farEnd.includes(stray)) return 'far-end';
    return roles.probes.includes(stray) ? 'probe' : 'other-axis';
  }
  return cycle.approach && cycle.backOff && cycle.zero.kind !== 'not-seen' ? 'between-reports' : 'none';
}

function afterOf({ cycle, motion }: SeekRun, { axis, home }: SeekRoles): Features['after'] {
  if (cycle.backOff) return 'reversed';
  return (cycle.stopDistance?.low ?? 0) > grantedPast({ cycle, motion }, { axis, home })
    ? 'pushed-on'
    : 'stopped';
}

/** The way an axis may go on past its first trip, mm: to stop, and where a beam has two switches to wait for the second side. */
export function grantedPast(
  { cycle, motion }: Pick<SeekRun, 'cycle' | 'motion'>,
  { axis, home }: Pick<SeekRoles, 'axis' | 'home'>,
): Mm {
  const speed = Math.abs(cycle.approach?.speed?.value ?? 0);
  const stops = mayRunOn(speed, axis.acceleration, axis.reaction, motion.abilities.step);
  return mm(stops + (home.length > 1 ? squaresWithin : 0));
}

function clearOf({ cycle }: SeekRun): Features['clear'] {
  if (cycle.clear || cycle.freed) return 'cleared';
  const wasOperated = cycle.trip !== undefined || cycle.start.condition === 'operated';
  return wasOperated && cycle.endCondition === 'operated' ? 'stays-operated' : undefined;
}

function slowOf({ cycle }: SeekRun): Features['slow'] {
  if (cycle.slowApproach) return cycle.slowTrip ? 'tripped' : 'missed';
  return cycle.backOff ? 'not-made' : undefined;
}

function edgesOf({ window, rest }: SeekRun, input: InputName): number {
  let before: Condition = 'unknown';
  let operated = 0;
  for (const reading of window.readings) {
    if (reading.kind === 'edge' && reading.input === input) operated++;
    if (reading.kind !== 'status') continue;
    const now = conditionOf(stateIn(reading, input), rest[input]);
    if (now === 'operated' && before === 'free') operated++;
    before = now;
  }
  return operated;
}

function zeroOf({ cycle }: SeekRun, { axis }: SeekRoles): Features['zero'] {
  if (cycle.zero.kind === 'jump') return 'set';
  // Where nothing moved, the number that stood there before shows nothing.
  if (cycle.zero.kind === 'agrees') return cycle.approach || cycle.freed ? 'set' : 'not-set';
  // Where the file does not tell the value, an axis that already agreed with it shows nothing when it is zeroed again.
  return axis.homeValue === undefined && cycle.slowTrip ? undefined : 'not-set';
}

function speedOf({ cycle, motion }: SeekRun, { axis }: SeekRoles): Features['speed'] {
  const { approach } = cycle;
  const speed = approach?.speed;
  if (!approach || !speed) return undefined;
  const declared = axis.approachSpeed === undefined ? crawlSpeed / crawlShare : axis.approachSpeed / 60;
  // A few tenths of a millimetre are over before the ramp is; and where the approach would fall between two reports, what was seen may be the slow one.
  const isShort = approach.at.high - approach.at.low < shortestForSpeed;
  const wouldTake = (approach.distance.high / declared) * 1000;
  if (isShort || wouldTake < 2 * usualPeriod(motion.samples)) return 'as-declared';
  return Math.abs(speed.value) < declared * crawlShare ? 'crawl' : 'as-declared';
}

function elsewhereOf({ cycle, strayTrips, window, rest }: SeekRun, roles: SeekRoles): Features['elsewhere'] {
  const first = window.lead ?? window.readings.find((each) => each.kind === 'status');
  const others = [...roles.farEnd, ...roles.otherAxes];
  if (
    first?.kind === 'status' &&
    others.some((input) => conditionOf(stateIn(first, input), rest[input]) === 'operated')
  )
    return 'operated-before';
  const { backOff } = cycle;
  // While it backs off, and no later: other axes come to their switches after it.
  return backOff &&
    strayTrips.some(
      ({ input, at }) => others.includes(input) && at.high > backOff.at.low && at.low <= backOff.at.high,
    )
    ? 'operated-after-reversal'
    : 'free';
}

function runOnOf({ cycle }: SeekRun, { overtravel }: SeekRoles): Features['runOn'] {
  if (overtravel === undefined || !cycle.stopDistance) return undefined;
  if (cycle.stopDistance.low > overtravel) return 'beyond-overtravel';
  return cycle.stopDistance.high <= overtravel ? 'within-overtravel' : undefined;
}

/** A run that found nothing: as long as its axis, or less. A controller that seeks no further than it was told to comes to less. */
function ranOf({ cycle }: SeekRun, { axis }: SeekRoles): Features['ran'] {
  if (!cycle.approach || cycle.trip || axis.travel === undefined) return undefined;
  return cycle.approach.distance.low >= axis.travel ? 'whole-travel' : 'less';
}

/** Two home inputs that change in the very same report, edge for edge, may be one. A side that stops at the first of them has not shown the other. */
function sidesOf({ homeTrips, cycle }: SeekRun): Features['sides'] {
  if (homeTrips.length < 2) return undefined;
  const trips = homeTrips.flatMap(({ trip }) => trip ?? []);
  if (trips.length === 0) return undefined;
  if (trips.length < homeTrips.length) {
    const wentOn = (cycle.stopDistance?.low ?? 0) > squaresWithin;
    return wentOn || cycle.slowApproach || cycle.zero.kind === 'jump' ? 'one' : undefined;
  }
  return trips.every((trip) => trip.arrived === trips[0]?.arrived) ? 'same-report' : 'both';
}

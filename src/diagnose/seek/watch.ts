import type { InputName } from '../../model/machine.ts';
import type { Reading } from '../../model/reading.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';
import { type AxisSample, axisSample } from '../motion/track.ts';
import type { SeekAlarm, SeekDanger } from './alarm.ts';
import type { SeekExpectation } from './expectation.ts';
import { Following } from './following.ts';
import { clearsWithin, longestBackOff, mayRunOn, reportsForAlarm } from './limits.ts';
import { RestBand } from './rest-band.ts';
import { Streaks } from './streaks.ts';

/** Where a seek stands, as far as the reports have shown it. */
export type SeekPhase = 'rest' | 'approach' | 'away' | 'operated' | 'cleared';

interface Trip {
  readonly input: InputName;
  /** At the report that made it certain. */
  readonly position: Mm;
  readonly speed: number;
  readonly way: Direction | undefined;
  /** Not operated already when the axis set off. */
  readonly underWay: boolean;
}

/**
 * Watches one axis report by report and raises each alarm once, at the report that makes it certain. It takes no clock and no person: what it
 * is fed is all it knows. It only ever says "stop"; that nothing was raised proves nothing.
 */
export class SeekWatch {
  private readonly expected: SeekExpectation;
  private readonly following: Following;
  private readonly streaks: Streaks;
  private readonly raised = new Set<string>();
  private phaseNow: SeekPhase = 'rest';
  private way: Direction | undefined;
  /** The way that leads onto the switch: the first one, unless it had to come off it first. */
  private seekWay: Direction | undefined;
  private band: RestBand | undefined;
  private speedAtTrip: number | undefined;
  private trip: Trip | undefined;
  /** Farthest place so far, counted the way it went. */
  private farthest: number | undefined;
  private readonly past = new Map<'on' | 'back' | 'away', number>();
  private reportsUnderWay = 0;

  constructor(expected: SeekExpectation) {
    this.expected = expected;
    this.following = new Following(expected);
    this.streaks = new Streaks(expected);
  }

  get phase(): SeekPhase {
    return this.phaseNow;
  }

  /** The way of the first certain motion. */
  get firstWay(): Direction | undefined {
    return this.way;
  }

  feed(reading: Reading): readonly SeekAlarm[] {
    if (reading.kind === 'gap') this.forget();
    if (reading.kind !== 'status') return [];
    const sample = axisSample(reading, this.expected.axis);
    if (!sample) return [];
    const followed = this.following.take(sample);
    if (followed === 'set-aside') return [];
    if (followed === 'new-frame') this.forgetPlaces();
    this.streaks.take(reading);
    this.followSwitch(sample);
    return [...this.motionDangers(sample), ...this.wrongSwitches()].flatMap((danger) =>
      this.once(danger, sample),
    );
  }

  private once(danger: SeekDanger, { arrived, position }: AxisSample): readonly SeekAlarm[] {
    const name = 'input' in danger ? `${danger.kind} ${danger.input}` : danger.kind;
    if (this.raised.has(name)) return [];
    this.raised.add(name);
    return [{ ...danger, axis: this.expected.axis, arrived, position }];
  }

  /** After a hole in the stream nothing is known of where it stands; which way it first went still is. */
  private forget(): void {
    this.following.forget();
    this.streaks.forget();
    this.forgetPlaces();
  }

  private forgetPlaces(): void {
    this.band = undefined;
    this.speedAtTrip = undefined;
    this.trip = undefined;
    this.past.clear();
    this.farthest = undefined;
    this.phaseNow = 'rest';
  }

  /** A switch counts as operated from the second report on: the first alone, and the place it names, may be noise. */
  private followSwitch({ position }: AxisSample): void {
    const own = this.streaks.own;
    if (own === undefined) {
      this.speedAtTrip = undefined;
      if (this.phaseNow === 'operated') this.phaseNow = 'cleared';
      return;
    }
    if (this.phaseNow === 'operated') return;
    this.speedAtTrip ??= this.following.speed;
    if (this.streaks.of(own) < reportsForAlarm) return;
    const underWay = this.way !== undefined;
    this.trip = { input: own, position, speed: this.speedAtTrip, way: this.seekWay, underWay };
    this.farthest = position;
    this.phaseNow = 'operated';
    if (underWay) this.following.hasPeaked = true;
  }

  private motionDangers(sample: AxisSample): readonly SeekDanger[] {
    this.band ??= new RestBand(sample.position, this.expected.step, this.expected.gridKnown);
    if (this.way !== undefined) return this.underWay(sample);
    const way = this.band.take(sample.position, sample.activity === 'still');
    return way === undefined ? [] : this.setsOff(way, sample, mm(this.band.past(sample.position)));
  }

  private setsOff(way: Direction, sample: AxisSample, past: Mm): readonly SeekDanger[] {
    const { toward, towardWork } = this.expected;
    this.way = way;
    this.seekWay = way;
    if (this.phaseNow === 'operated' && this.trip) {
      // Off a switch that is operated already, away is the right way.
      this.seekWay = toward ?? (way === 1 ? -1 : 1);
      this.trip = { ...this.trip, way: this.seekWay };
      return this.onTheSwitch(sample);
    }
    this.farthest = sample.position;
    this.phaseNow = toward !== undefined && way !== toward ? 'away' : 'approach';
    if (this.phaseNow === 'away') return [{ kind: 'heads-away', past }];
    return way === towardWork ? [{ kind: 'heads-for-work', past }] : [];
  }

  private underWay(sample: AxisSample): readonly SeekDanger[] {
    this.reportsUnderWay++;
    return this.phaseNow === 'operated' ? this.onTheSwitch(sample) : this.offTheSwitch(sample);
  }

  private onTheSwitch({ position }: AxisSample): readonly SeekDanger[] {
    const { trip } = this;
    if (trip?.way === undefined || this.streaks.of(trip.input) < reportsForAlarm) return [];
    const { acceleration, reaction, step, backOff } = this.expected;
    const on = (position - trip.position) * trip.way;
    if (this.goesPast('on', on, mayRunOn(trip.speed, acceleration, reaction, step)))
      return [{ kind: 'pushes-on', input: trip.input, by: mm(on) }];
    // A switch found operated may have been driven in by more than one that has just tripped.
    const granted = Math.max(trip.underWay ? clearsWithin : longestBackOff, backOff ?? 0);
    if (!this.goesPast('back', -on, granted)) return [];
    return [{ kind: 'stays-operated', input: trip.input, back: mm(-on) }];
  }

  /** Turned back without a trip seen: a short trip may have fallen between two reports, so a back-off is granted. */
  private offTheSwitch({ position }: AxisSample): readonly SeekDanger[] {
    const { toward, backOff } = this.expected;
    if (toward === undefined || this.phaseNow !== 'approach') return [];
    const back = mm((this.farther(position, toward) - position) * toward);
    const granted = Math.max(longestBackOff, 2 * (backOff ?? 0));
    return this.goesPast('away', back, granted) ? [{ kind: 'heads-away', past: back }] : [];
  }

  /** Past a bound in two reports in a row and still going: a number that was set once does not go on. */
  private goesPast(what: 'on' | 'back' | 'away', way: number, bound: number): boolean {
    const before = this.past.get(what);
    if (way > bound) this.past.set(what, way);
    else this.past.delete(what);
    return way > bound && before !== undefined && way >= before + this.expected.step * 0.9;
  }

  private farther(position: Mm, way: Direction): number {
    this.farthest = Math.max((this.farthest ?? position) * way, position * way) * way;
    return this.farthest;
  }

  /** A switch that became operated since the axis set off, or in the two reports before that was certain. */
  private wrongSwitches(): readonly SeekDanger[] {
    if (this.phaseNow !== 'approach' && this.phaseNow !== 'away') return [];
    const within = this.reportsUnderWay + reportsForAlarm;
    return this.streaks.wrong(reportsForAlarm, within).map((input) => ({ kind: 'wrong-switch', input }));
  }
}

import type { Reading } from '../../model/reading.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';
import { type AxisSample, axisSample } from '../motion/track.ts';
import type { SeekAlarm, SeekDanger } from './alarm.ts';
import { Bounds, ReportTimes } from './bounds.ts';
import type { SeekExpectation } from './expectation.ts';
import { Following } from './following.ts';
import { alarmsAfter, longestBackOff, reportsForAlarm } from './limits.ts';
import { RestBand } from './rest-band.ts';
import { Streaks } from './streaks.ts';
import { mayComeBack, mayGoOn, type Trip } from './trip.ts';

const none: readonly SeekAlarm[] = [];

/** Where a seek stands, as far as the reports have shown it. */
export type SeekPhase = 'rest' | 'approach' | 'away' | 'operated' | 'cleared';

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
  private readonly bounds = new Bounds();
  private reportsUnderWay = 0;
  private readonly times = new ReportTimes();

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
    // What moved in a silence was not seen: not which way, nor whether it was a new number only.
    if (this.following.wasSilentBefore(sample)) this.forget();
    const followed = this.following.take(sample);
    if (followed === 'set-aside') return [];
    if (followed === 'new-frame') this.forgetPlaces();
    this.streaks.take(reading);
    this.times.take(reading.at);
    this.followSwitch(sample);
    const dangers = [...this.motionDangers(sample), ...this.wrongSwitches()];
    return dangers.length === 0 ? none : dangers.flatMap((danger) => this.once(danger, sample));
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
    this.bounds.forget();
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
    if (this.phaseNow === 'operated') {
      this.secondSide(position);
      return;
    }
    this.speedAtTrip ??= this.following.speed;
    if (this.streaks.of(own) < reportsForAlarm) return;
    const underWay = this.way !== undefined;
    const both = this.bothSides;
    this.trip = { input: own, position, speed: this.speedAtTrip, way: this.seekWay, underWay, both };
    this.farthest = position;
    this.phaseNow = 'operated';
    if (underWay) this.following.hasPeaked = true;
  }

  /** Where a beam has two switches, what it may run on counts from the trip of the second. */
  private secondSide(position: Mm): void {
    if (!this.trip || this.trip.both || !this.bothSides) return;
    this.trip = { ...this.trip, both: true, position, speed: this.following.speed };
    this.farthest = position;
  }

  private get bothSides(): boolean {
    return this.expected.inputs.every((input) => this.streaks.of(input) > 0);
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
    const { step } = this.expected;
    const on = (position - trip.position) * trip.way;
    if (this.bounds.passes('on', on, mayGoOn(trip, this.expected), step))
      return [{ kind: 'pushes-on', input: trip.input, by: mm(on) }];
    if (!this.bounds.passes('back', -on, mayComeBack(trip, this.expected), step)) return [];
    return [{ kind: 'stays-operated', input: trip.input, back: mm(-on) }];
  }

  /** Turned back without a trip seen: a short trip may have fallen between two reports, so a back-off is granted. */
  private offTheSwitch({ position }: AxisSample): readonly SeekDanger[] {
    const { toward, backOff, step } = this.expected;
    if (toward === undefined || this.phaseNow !== 'approach') return [];
    const back = mm((this.farther(position, toward) - position) * toward);
    const granted = Math.max(longestBackOff, 2 * (backOff ?? 0));
    return this.bounds.passes('away', back, granted, step) ? [{ kind: 'heads-away', past: back }] : [];
  }

  private farther(position: Mm, way: Direction): number {
    this.farthest = Math.max((this.farthest ?? position) * way, position * way) * way;
    return this.farthest;
  }

  /** A switch that became operated since the axis set off, or in the two reports before that was certain. */
  private wrongSwitches(): readonly SeekDanger[] {
    if (this.phaseNow !== 'approach' && this.phaseNow !== 'away') return [];
    const within = this.reportsUnderWay + reportsForAlarm;
    return this.streaks
      .wrong(reportsForAlarm, within)
      .filter((input) => this.times.spanOf(this.streaks.of(input)) >= alarmsAfter)
      .map((input) => ({ kind: 'wrong-switch', input }));
  }
}

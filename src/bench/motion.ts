import type { Activity } from '../model/reading.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import type { Axis } from './axis.ts';

/** One straight stretch of an axis at constant speed, signed mm and mm/s; ends early where `until` is met. */
export interface Stretch {
  readonly axis: Axis;
  readonly by: number;
  readonly speed: number;
  readonly until?: () => boolean;
}

/** Yields stretches one after the other and is told of each whether its `until` was met; returns whether all went well. */
export type Course = Generator<Stretch, boolean, boolean>;

/** One straight move; `speed` mm/s. */
export function* straight(axis: Axis, by: number, speed: number): Course {
  yield { axis, by, speed };
  return true;
}

/** Runs to the home end until the input is active, and stops there. */
export function* seek(axis: Axis, isActive: () => boolean): Course {
  const { homes, stops, approach } = axis.truth;
  const outwards = homes === 'positive' ? 1 : -1;
  const farthest = (stops[1] - stops[0]) * 1.2;
  return yield { axis, by: outwards * farthest, speed: approach, until: isActive };
}

/** Approach, trip, back off, slow approach, trip, release; counts from the home value where it then stands. */
export function* homing(axis: Axis, isActive: () => boolean): Course {
  const { homes, backOff, approach, slow, homeValue } = axis.truth;
  const outwards = homes === 'positive' ? 1 : -1;
  if (!(yield* seek(axis, isActive))) return false;
  yield { axis, by: -outwards * backOff, speed: approach };
  const again = yield { axis, by: outwards * backOff * 2, speed: slow, until: isActive };
  if (!again) return false;
  yield { axis, by: -outwards * backOff, speed: slow };
  axis.commanded = homeValue;
  return !isActive();
}

/** How finely motion is stepped, ms: 0.06 mm at the fastest. */
const stepEvery = ms(1);

/** Carries out one course at a time. */
export class Motion {
  private readonly time: Timekeeper;
  private readonly driven: () => boolean;
  private readonly show: (activity: Activity) => void;
  private takeBack: (() => void) | undefined;

  constructor(time: Timekeeper, driven: () => boolean, show: (activity: Activity) => void) {
    this.time = time;
    this.driven = driven;
    this.show = show;
  }

  get underWay(): boolean {
    return this.takeBack !== undefined;
  }

  start(course: Course, as: 'moving' | 'homing'): void {
    this.stop();
    this.show(as);
    this.go(course, course.next());
  }

  /** Stands still where it is, at once. */
  stop(): void {
    if (!this.takeBack) return;
    this.takeBack();
    this.takeBack = undefined;
    this.show('still');
  }

  private go(course: Course, next: IteratorResult<Stretch, boolean>): void {
    if (next.done) {
      this.takeBack = undefined;
      this.show(next.value ? 'still' : 'fault');
      return;
    }
    const { axis, by, speed, until } = next.value;
    const startedAt = this.time.now();
    let gone = 0;
    const step = () => {
      const due = Math.min(Math.abs(by), ((this.time.now() - startedAt) / 1000) * speed);
      axis.step(Math.sign(by) * (due - gone), this.driven());
      gone = due;
      const met = until?.() ?? false;
      if (met || gone >= Math.abs(by)) this.go(course, course.next(met));
      else this.takeBack = this.time.after(stepEvery, step);
    };
    this.takeBack = this.time.after(stepEvery, step);
  }
}

import type { Activity } from '../model/reading.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import type { Axis } from './axis.ts';
import type { Course } from './courses.ts';
import { type Stretch, StretchRun } from './stretch.ts';

/** How finely motion is stepped, ms: 0.06 mm at the fastest. */
const stepEvery = ms(1);

export interface MotionOf {
  readonly time: Timekeeper;
  /** Whether the drives have power. */
  readonly powered: () => boolean;
  readonly show: (activity: Activity) => void;
  /** How long the filter of an axis's home inputs holds a change back, ms. */
  readonly filterMs: (axis: Axis) => number;
}

/** Carries out one course at a time. */
export class Motion {
  private readonly own: MotionOf;
  private takeBack: (() => void) | undefined;
  private run: StretchRun | undefined;
  private halting = false;
  /** What the course under way is shown as. */
  as: 'moving' | 'homing' = 'moving';

  constructor(own: MotionOf) {
    this.own = own;
  }

  get underWay(): boolean {
    return this.takeBack !== undefined;
  }

  /** What moves, and how fast, signed mm/s. */
  get now(): { readonly axis: Axis; readonly velocity: number } | undefined {
    return this.run && { axis: this.run.stretch.axis, velocity: this.run.velocity };
  }

  start(course: Course, as: 'moving' | 'homing'): void {
    this.stop();
    this.as = as;
    this.own.show(as);
    this.go(course, course.next());
  }

  /** No more pulses, at once. */
  stop(): void {
    if (!this.takeBack) return;
    this.end('still');
  }

  /** Comes to rest down its ramp, after its reaction, and ends in a fault. */
  halt(): void {
    const { run } = this;
    if (!run || this.halting) return;
    this.halting = true;
    run.brake();
  }

  private go(course: Course, next: IteratorResult<Stretch, boolean>): void {
    if (next.done) {
      this.end(next.value ? 'still' : 'fault');
      return;
    }
    const { time, powered, filterMs } = this.own;
    const run = new StretchRun(next.value, filterMs(next.value.axis));
    this.run = run;
    let from = time.now();
    const step = () => {
      const now = time.now();
      const end = run.run(now - from, powered());
      from = now;
      // Its switches may have stopped it on the way.
      if (this.run !== run) return;
      if (!end) this.takeBack = time.after(stepEvery, step);
      else if (this.halting) this.end('fault');
      else this.go(course, course.next(end));
    };
    this.takeBack = time.after(stepEvery, step);
  }

  private end(activity: Activity): void {
    this.takeBack?.();
    this.takeBack = undefined;
    this.run?.stretch.axis.waiting.clear();
    this.run = undefined;
    this.halting = false;
    this.own.show(activity);
  }
}

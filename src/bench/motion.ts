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

/** A course under way. */
interface Lane {
  readonly course: Course;
  takeBack: () => void;
  run: StretchRun | undefined;
}

/** Carries out courses: those of one stage at the same time, the next stage when all of them are over. */
export class Motion {
  private readonly own: MotionOf;
  private readonly lanes = new Set<Lane>();
  private stages: readonly (readonly Course[])[] = [];
  private halting = false;
  /** What the courses under way are shown as. */
  as: 'moving' | 'homing' = 'moving';

  constructor(own: MotionOf) {
    this.own = own;
  }

  get underWay(): boolean {
    return this.lanes.size > 0;
  }

  /** What moves, and how fast, signed mm/s. */
  get now(): readonly { readonly axis: Axis; readonly velocity: number }[] {
    return [...this.lanes].flatMap(({ run }) =>
      run ? [{ axis: run.stretch.axis, velocity: run.velocity }] : [],
    );
  }

  start(stages: readonly (readonly Course[])[], as: 'moving' | 'homing'): void {
    this.stop();
    this.as = as;
    this.own.show(as);
    this.stages = stages;
    this.nextStage();
  }

  /** No more pulses, at once. */
  stop(): void {
    if (this.underWay) this.end('still');
  }

  /** Comes to rest down its ramps, after its reaction, and ends in a fault. */
  halt(): void {
    if (!this.underWay || this.halting) return;
    this.halting = true;
    for (const { run } of this.lanes) run?.brake();
  }

  private nextStage(): void {
    const [stage, ...later] = this.stages;
    this.stages = later;
    if (!stage) {
      this.end('still');
      return;
    }
    const lanes = stage.map((course): Lane => ({ course, takeBack: () => {}, run: undefined }));
    for (const lane of lanes) this.lanes.add(lane);
    for (const lane of lanes) if (this.lanes.has(lane)) this.go(lane, lane.course.next());
  }

  private go(lane: Lane, next: IteratorResult<Stretch, boolean>): void {
    if (next.done) {
      this.lanes.delete(lane);
      if (!next.value) this.end('fault');
      else if (!this.underWay) this.nextStage();
      return;
    }
    const { time, powered, filterMs } = this.own;
    const run = new StretchRun(next.value, filterMs(next.value.axis));
    lane.run = run;
    let from = time.now();
    const step = () => {
      const now = time.now();
      const end = run.run(now - from, powered());
      from = now;
      // Its switches may have stopped it on the way.
      if (!this.lanes.has(lane) || lane.run !== run) return;
      if (!end) lane.takeBack = time.after(stepEvery, step);
      else if (this.halting) this.end('fault');
      else this.go(lane, lane.course.next(end));
    };
    lane.takeBack = time.after(stepEvery, step);
  }

  private end(activity: Activity): void {
    for (const { takeBack, run } of this.lanes) {
      takeBack();
      run?.stretch.axis.waiting.clear();
    }
    this.lanes.clear();
    this.stages = [];
    this.halting = false;
    this.own.show(activity);
  }
}

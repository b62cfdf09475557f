import type { Axis } from './axis.ts';

/** One straight stretch of an axis from standstill to standstill: signed mm, mm/s; brakes early where `until` is met. */
export interface Stretch {
  readonly axis: Axis;
  readonly by: number;
  readonly speed: number;
  readonly until?: () => boolean;
}

/** Whether `until` was met, and at which count the controller noticed. */
export interface StretchEnd {
  readonly met: boolean;
  readonly at: number;
}

/** How often the controller looks at its inputs, ms. */
const looksEvery = 4;
/** How finely a late timer is made up for, ms. */
const finest = 2;

/** A stretch under way: ramps up, cruises, ramps down to its end, or earlier where it is told to. */
export class StretchRun {
  readonly stretch: Stretch;
  private readonly way: number;
  private readonly brakesAfter: number;
  private speedNow = 0;
  private gone = 0;
  private lookedAt = 0;
  private ran = 0;
  private noticed: { readonly at: number; readonly brakesFrom: number } | undefined;
  private isBraking = false;

  constructor(stretch: Stretch, filterMs: number) {
    this.stretch = stretch;
    this.way = Math.sign(stretch.by);
    // The contact's filter and the wait for the next look are part of the reaction that an axis is known for.
    this.brakesAfter = Math.max(0, stretch.axis.truth.reaction - filterMs - looksEvery);
  }

  /** Signed, mm/s. */
  get velocity(): number {
    return this.speedNow * this.way;
  }

  /** Comes down its ramp from now on, wherever it is. */
  brake(): void {
    this.isBraking = true;
  }

  /** Goes on for `span` ms; the motors turn where they have power. Returns how it ended, once it has. */
  run(span: number, powered: boolean): StretchEnd | undefined {
    for (let left = span; left > 0; left -= finest) {
      const end = this.tick(Math.min(left, finest), powered);
      if (end) return end;
    }
    return undefined;
  }

  private tick(span: number, powered: boolean): StretchEnd | undefined {
    const { axis, by, speed } = this.stretch;
    const left = Math.abs(by) - this.gone;
    const gain = (axis.acceleration * span) / 1000;
    if (this.isBraking) this.speedNow = Math.max(0, this.speedNow - gain);
    else {
      const stopsIn = Math.max(gain, Math.sqrt(2 * axis.acceleration * left));
      this.speedNow = Math.min(speed, this.speedNow + gain, stopsIn);
    }
    const way = Math.min(left, (this.speedNow * span) / 1000);
    this.gone += way;
    this.ran += span;
    axis.step(this.way * way, this.speedNow, powered);
    this.look();
    if (!this.isBraking && left - way > 0) return undefined;
    if (this.isBraking && this.speedNow > 0 && left - way > 0) return undefined;
    this.speedNow = 0;
    return { met: this.noticed !== undefined, at: this.noticed?.at ?? axis.counted };
  }

  private look(): void {
    if (this.noticed) {
      if (this.ran >= this.noticed.brakesFrom) this.isBraking = true;
      return;
    }
    if (!this.stretch.until || this.ran - this.lookedAt < looksEvery) return;
    this.lookedAt = this.ran;
    if (this.stretch.until())
      this.noticed = { at: this.stretch.axis.counted, brakesFrom: this.ran + this.brakesAfter };
  }
}

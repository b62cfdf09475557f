import { type Millis, ms } from '../model/units.ts';
import type { SessionClock } from './session-clock.ts';

/** How often an answered ask is looked at again while no reading comes. */
const lookAgain = ms(250);

/** Has an open ask looked at when its time is up, and soon again while it is watched on: time passes even where nothing arrives. */
export class LookTimer {
  private readonly clock: SessionClock;
  private readonly look: () => void;
  private deadline: (() => void) | undefined;
  private next: (() => void) | undefined;

  constructor(clock: SessionClock, look: () => void) {
    this.clock = clock;
    this.look = look;
  }

  at(delay: Millis): void {
    this.deadline = this.clock.after(delay, this.look);
  }

  soon(): void {
    this.next ??= this.clock.after(lookAgain, () => {
      this.next = undefined;
      this.look();
    });
  }

  cancel(): void {
    this.deadline?.();
    this.next?.();
    this.deadline = this.next = undefined;
  }
}

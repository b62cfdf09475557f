import type { Timekeeper } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';

export interface VirtualTime extends Timekeeper {
  /**
   * Lets time pass: calls what is due, in order of time and, within one moment, in the order it was asked for. Stops as soon as
   * `until` says so, which is asked before each call, or when nothing is due any more. Returns whether `until` was met.
   */
  run(until: () => boolean): boolean;
  /** Lets time pass up to a moment, which is then now: calls what is due by then. */
  runTo(moment: Millis): void;
  /** When something is due next; undefined where nothing is. */
  readonly next: Millis | undefined;
}

interface Due {
  readonly at: number;
  readonly order: number;
  call: (() => void) | undefined;
}

/** A clock on which waiting costs nothing: it stands still while something is done and jumps to whatever is due next. */
export function virtualTime(start: Millis = ms(0)): VirtualTime {
  const queue = new DueQueue();
  let now: number = start;
  let order = 0;
  return {
    now: () => ms(now),
    after(delay, then) {
      const due: Due = { at: now + Math.max(0, delay), order: order++, call: then };
      queue.add(due);
      return () => {
        due.call = undefined;
      };
    },
    run(until) {
      while (!until()) {
        const next = queue.take();
        if (!next) return false;
        if (!next.call) continue;
        now = next.at;
        next.call();
      }
      return true;
    },
    runTo(moment) {
      for (let at = queue.next; at !== undefined && at <= moment; at = queue.next) {
        const due = queue.take();
        now = Math.max(now, at);
        due?.call?.();
      }
      now = Math.max(now, moment);
    },
    get next() {
      return queue.next;
    },
  };
}

/** A binary heap: the earliest on top. What was taken back stays in it, empty, until its turn comes. */
class DueQueue {
  private readonly heap: Due[] = [];

  add(due: Due): void {
    let at = this.heap.push(due) - 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.swapIfEarlier(at, above)) return;
      at = above;
    }
  }

  /** When the earliest is due that was not taken back. */
  get next(): Millis | undefined {
    while (this.heap[0] && !this.heap[0].call) this.take();
    return this.heap[0] && ms(this.heap[0].at);
  }

  take(): Due | undefined {
    const [first] = this.heap;
    const last = this.heap.pop();
    if (!first || !last || this.heap.length === 0) return first;
    this.heap[0] = last;
    this.sink();
    return first;
  }

  private sink(): void {
    let at = 0;
    for (;;) {
      const left = 2 * at + 1;
      const right = left + 1;
      const below = this.isEarlier(right, left) ? right : left;
      if (!this.swapIfEarlier(below, at)) return;
      at = below;
    }
  }

  private isEarlier(a: number, b: number): boolean {
    const one = this.heap[a];
    const other = this.heap[b];
    if (!one || !other) return false;
    return one.at < other.at || (one.at === other.at && one.order < other.order);
  }

  private swapIfEarlier(low: number, high: number): boolean {
    const below = this.heap[low];
    const above = this.heap[high];
    if (!below || !above || !this.isEarlier(low, high)) return false;
    this.heap[high] = below;
    this.heap[low] = above;
    return true;
  }
}

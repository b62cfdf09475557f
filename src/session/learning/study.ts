import { type Learned, learned } from '../../diagnose/learning/learn.ts';
import type { AskedWindow, HeardLine } from '../../diagnose/learning/observed.ts';
import type { Line } from '../../model/reading.ts';
import { type TakenApart, takeApart } from '../../transport/stream/shapes/fields.ts';

/** Lines kept in all: more than an hour of any stream's presses and moves. */
const mostLines = 60_000;
const lastLines = 400;

/** What was heard while something was asked for, and what follows from it so far. */
export class Study {
  readonly heard: (HeardLine & TakenApart)[] = [];
  readonly windows: AskedWindow[] = [];
  /** The last lines, whatever was asked. */
  readonly last: Line[] = [];
  private underWay: (HeardLine & TakenApart)[] = [];
  private known: { readonly windows: number; readonly learned: Learned } | undefined;

  line(line: Line, isAsked: boolean): void {
    this.last.push(line);
    if (this.last.length > lastLines) this.last.shift();
    if (!isAsked || this.heard.length + this.underWay.length >= mostLines) return;
    this.underWay.push({ arrived: line.arrived, ...takeApart(line.text) });
  }

  /** Closes a window: its lines count, or are forgotten where what was asked was not done. */
  close(window: AskedWindow | undefined): void {
    if (window) {
      this.heard.push(...this.underWay);
      this.windows.push(window);
    }
    this.underWay = [];
  }

  learned(): Learned {
    if (this.known?.windows !== this.windows.length)
      this.known = { windows: this.windows.length, learned: learned(this.heard, this.windows) };
    return this.known.learned;
  }
}

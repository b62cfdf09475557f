import { type Learned, learned } from '../../diagnose/learning/learn.ts';
import type { AskedWindow, HeardLine } from '../../diagnose/learning/observed.ts';
import type { Line } from '../../model/reading.ts';
import { type TakenApart, takeApart } from '../../transport/stream/shapes/fields.ts';

/** Lines kept in all. */
const mostLines = 120_000;
/** More lines a second than this teach nothing more; then whole slots of time are left out, short against any press, ms. */
const enoughLines = 250;
const slot = 60;
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
    if (!isAsked || this.isLeftOut(line) || this.heard.length + this.underWay.length >= mostLines) return;
    this.underWay.push({ arrived: line.arrived, ...takeApart(line.text) });
  }

  private isLeftOut({ arrived }: Line): boolean {
    const [first] = this.last;
    const span = first === undefined ? 0 : arrived - first.arrived;
    const rate = span > 0 ? (this.last.length * 1000) / span : 0;
    const every = Math.min(5, Math.ceil(rate / enoughLines));
    return every > 1 && Math.floor(arrived / slot) % every !== 0;
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

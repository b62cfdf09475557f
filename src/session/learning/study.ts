import { type Learned, learned } from '../../diagnose/learning/learn.ts';
import type { AskedWindow, HeardLine } from '../../diagnose/learning/observed.ts';
import type { InputName } from '../../model/machine.ts';
import type { Line } from '../../model/reading.ts';
import { type TakenApart, takeApart } from '../../transport/stream/shapes/fields.ts';

/** Lines kept in all, where none is like another; one that was heard before costs less. */
const mostLines = 120_000;
const again = 1 / 8;
/** Different lines remembered to be met again. */
const mostKnown = 5000;
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
  private kept = 0;
  private readonly met = new Map<string, TakenApart>();
  private known: { readonly windows: number; readonly learned: Learned } | undefined;

  line(line: Line, isAsked: boolean): void {
    this.last.push(line);
    if (this.last.length > lastLines) this.last.shift();
    if (!isAsked || this.kept >= mostLines || this.isLeftOut(line)) return;
    const { fields, count } = this.partsOf(line.text);
    this.underWay.push({ arrived: line.arrived, fields, count });
  }

  /** Machines mostly stand still, and then a line is the same as before. */
  private partsOf(text: string): TakenApart {
    const before = this.met.get(text);
    this.kept += before ? again : 1;
    if (before) return before;
    const parts = takeApart(text);
    if (this.met.size >= mostKnown) this.met.clear();
    this.met.set(text, parts);
    return parts;
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

  /** The inputs pressed so far, in that order. */
  get pressed(): readonly InputName[] {
    return [...new Set(this.windows.flatMap((each) => (each.kind === 'press' ? [each.input] : [])))];
  }

  learned(): Learned {
    if (this.known?.windows !== this.windows.length)
      this.known = { windows: this.windows.length, learned: learned(this.heard, this.windows) };
    return this.known.learned;
  }
}

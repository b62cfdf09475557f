/** What is shorter than this nobody sees, mm. */
const escapesTheEye = 0.5;

/** What a person sees who stands by and watches one axis, from the moment she began to look. */
export class Sighting {
  private from: number;
  private low: number;
  private high: number;
  /** The way onto its home switch. */
  private readonly onto: 1 | -1;
  /** Farthest place, counted onto the switch, since it stood on it. */
  private deepest: number | undefined;
  private back = 0;
  /** Its motor was heard to buzz or growl without turning it. */
  buzzed = false;
  /** It dropped by its own weight. */
  sagged = false;
  /** Most that the two sides of its beam stood apart, mm. */
  racked = 0;

  constructor(position: number, onto: 1 | -1) {
    this.onto = onto;
    this.from = position;
    this.low = position;
    this.high = position;
  }

  /** Looks from now on: what was before is forgotten. */
  begin(position: number, on: boolean): void {
    this.from = position;
    this.low = position;
    this.high = position;
    this.deepest = on ? position * this.onto : undefined;
    this.back = 0;
    this.buzzed = false;
    this.sagged = false;
    this.racked = 0;
  }

  /** `on`: it stands on the switch that it homes with. */
  see(position: number, on: boolean): void {
    if (position < this.low) this.low = position;
    if (position > this.high) this.high = position;
    const deep = position * this.onto;
    if (on || this.deepest !== undefined) this.deepest = Math.max(this.deepest ?? deep, deep);
    if (this.deepest !== undefined) this.back = Math.max(this.back, this.deepest - deep);
  }

  /** The way of its longest excursion. */
  get way(): 'positive' | 'negative' | 'none' {
    const up = this.high - this.from;
    const down = this.from - this.low;
    if (Math.max(up, down) < escapesTheEye) return 'none';
    return up > down ? 'positive' : 'negative';
  }

  get reached(): boolean {
    return this.deepest !== undefined;
  }

  /** Having stood on its switch it turned and came back, whether or not the switch let go. */
  get cameBack(): boolean {
    return this.back >= escapesTheEye;
  }

  get start(): number {
    return this.from;
  }
}

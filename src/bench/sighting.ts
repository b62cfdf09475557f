/** What a person sees who stands by and watches one axis, from the moment she began to look. */
export class Sighting {
  private from: number;
  private low: number;
  private high: number;
  private lastOn: number | undefined;
  private farthestBack = 0;
  /** Its motor was heard to buzz or growl without turning it. */
  buzzed = false;
  /** It dropped by its own weight. */
  sagged = false;
  /** Most that the two sides of its beam stood apart, mm. */
  racked = 0;

  constructor(position: number) {
    this.from = position;
    this.low = position;
    this.high = position;
  }

  /** Looks from now on: what was before is forgotten. */
  begin(position: number, on: boolean): void {
    this.from = position;
    this.low = position;
    this.high = position;
    this.lastOn = on ? position : undefined;
    this.farthestBack = 0;
    this.buzzed = false;
    this.sagged = false;
    this.racked = 0;
  }

  /** `on`: it stands on the switch that it homes with. */
  see(position: number, on: boolean): void {
    if (position < this.low) this.low = position;
    if (position > this.high) this.high = position;
    if (on) this.lastOn = position;
    else if (this.lastOn !== undefined)
      this.farthestBack = Math.max(this.farthestBack, Math.abs(position - this.lastOn));
  }

  /** The way of its longest excursion; what is shorter than half a millimetre escapes the eye. */
  get way(): 'positive' | 'negative' | 'none' {
    const up = this.high - this.from;
    const down = this.from - this.low;
    if (Math.max(up, down) < 0.5) return 'none';
    return up > down ? 'positive' : 'negative';
  }

  get reached(): boolean {
    return this.lastOn !== undefined;
  }

  /** It stood on its switch and came off it. */
  get cameBack(): boolean {
    return this.farthestBack > 0;
  }

  get start(): number {
    return this.from;
  }
}

import type { Contact } from './contact.ts';
import type { Dog as DogTruth } from './truth.ts';

/** What an axis carries to work one switch with; it may be bent, slip or sit elsewhere than it should. */
export class Dog {
  readonly contact: Contact;
  readonly side: 0 | 1;
  actuates: number;
  frees: number;
  /** How far outwards it keeps the switch operated. */
  length: number;
  outwards: 1 | -1;
  /** Each time it lets go of the switch it shifts by what this gives, mm outwards. */
  shifts: (() => number) | undefined;
  private on = false;

  constructor(contact: Contact, truth: DogTruth) {
    this.contact = contact;
    this.side = truth.side ?? 0;
    this.actuates = truth.actuates;
    this.frees = truth.frees;
    this.length = truth.length ?? Number.POSITIVE_INFINITY;
    this.outwards = truth.end === 'positive' ? 1 : -1;
  }

  get isOn(): boolean {
    return this.on;
  }

  /** `position` mm, true. */
  isPast(position: number): boolean {
    return this.depth(position) > this.length;
  }

  /** Pushes the switch or lets go of it, as the place asks for; between the two places it stays as it was. mm, true; mm/s. */
  work(position: number, speed: number): void {
    const depth = this.depth(position);
    // The lever springs back a little later than it was pushed, on either flank alike.
    const lag = Math.abs(this.frees - this.actuates);
    if (depth >= 0 && depth <= this.length) this.push(speed);
    else if (depth <= -lag || depth > this.length + lag) this.letGo();
  }

  /** Moves the whole dog, mm outwards. */
  shift(by: number): void {
    this.actuates += by * this.outwards;
    this.frees += by * this.outwards;
  }

  private depth(position: number): number {
    return (position - this.actuates) * this.outwards;
  }

  private push(speed: number): void {
    if (this.on) return;
    this.on = true;
    this.contact.push('dog', speed);
  }

  private letGo(): void {
    if (!this.on) return;
    this.on = false;
    this.contact.letGo('dog');
    if (this.shifts) this.shift(this.shifts());
  }
}

import type { Contact } from './contact.ts';
import type { AxisTruth } from './truth.ts';

/** One axis: where the controller believes it to be, where it is, and the switches it works. */
export class Axis {
  readonly truth: AxisTruth;
  /** The controller's count; nothing measures it. */
  commanded = 0;
  private position: number;
  private readonly contacts: readonly Contact[];

  constructor(truth: AxisTruth, contacts: readonly Contact[]) {
    this.truth = truth;
    this.position = truth.stands;
    this.contacts = contacts.filter((contact) => contact.truth.dog?.axis === truth.letter);
    this.workSwitches();
  }

  get letter(): string {
    return this.truth.letter;
  }

  /** mm, true. */
  get stands(): number {
    return this.position;
  }

  /** The controller counts on whatever happens; the axis follows where its drive has power and metal lets it. */
  step(by: number, driven: boolean): void {
    this.commanded += by;
    if (driven) this.moveTo(this.position + by);
  }

  /** Moved without the controller: by hand, with the drives off. */
  moveTo(position: number): void {
    const [low, high] = this.truth.stops;
    this.position = Math.min(high, Math.max(low, position));
    this.workSwitches();
  }

  private workSwitches(): void {
    for (const contact of this.contacts) {
      const { dog } = contact.truth;
      if (!dog) continue;
      const outwards = dog.end === 'positive' ? 1 : -1;
      if ((this.position - dog.actuates) * outwards >= 0) contact.push('dog');
      else if ((dog.frees - this.position) * outwards >= 0) contact.letGo('dog');
    }
  }
}

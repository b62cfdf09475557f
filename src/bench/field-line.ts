import type { Contact } from './contact.ts';
import type { InputTruth } from './truth.ts';

/** One switch's end of a line: its plug, and a wire link across its terminals. */
export interface Leg {
  readonly contact: Contact;
  plugged: boolean;
  jumpered: boolean;
}

/** The wire of one input from its switches up to where it is put on the controller. */
export class FieldLine {
  readonly truth: InputTruth;
  readonly legs: readonly Leg[];
  core: 'whole' | 'broken' = 'whole';
  /** A screw that does not hold its wire: open for moments. */
  loose = false;
  /** Its return goes on through this line's switches instead of to ground. */
  returnThrough: FieldLine | undefined;

  constructor(truth: InputTruth, contacts: readonly Contact[]) {
    this.truth = truth;
    this.legs = contacts.map((contact) => ({ contact, plugged: true, jumpered: false }));
  }

  leg(subject: string): Leg | undefined {
    return this.legs.find(({ contact }) => contact.truth.subject === subject);
  }

  /** Whether current finds its way from the near end of the core through the switches to ground. */
  get reachesGround(): boolean {
    const through = (leg: Leg) => leg.jumpered || (leg.plugged && leg.contact.conducts);
    const legs = this.truth.joined === 'parallel' ? this.legs.some(through) : this.legs.every(through);
    return legs && (this.returnThrough?.reachesGround ?? true);
  }

  get isOpenOnTheWay(): boolean {
    return this.core === 'broken' || this.loose;
  }
}

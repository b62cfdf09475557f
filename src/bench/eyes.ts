import type { PlugEnd } from '../model/ask.ts';
import { axisNamed, switchNamed } from './named-parts.ts';
import type { World } from './world.ts';

/** What a person at the machine can see without any instrument. */
export class Eyes {
  private readonly world: World;

  constructor(world: World) {
    this.world = world;
  }

  /** A hand or the machine stands on the switch; a lever that is bent or stuck by itself is not touched by anything. */
  touched(subject: string): boolean {
    return switchNamed(this.world, subject).leg.contact.touched;
  }

  /** Its lever, plunger or button stands in, whatever holds it there. */
  isIn(subject: string): boolean {
    return switchNamed(this.world, subject).leg.contact.operated;
  }

  inHand(subject: string): boolean {
    return switchNamed(this.world, subject).leg.contact.inHand;
  }

  isOut(subject: string, at: PlugEnd): boolean {
    const { line, leg } = switchNamed(this.world, subject);
    return at === 'switch' ? !leg.plugged : this.world.wiring.isConnectorOut(line.truth.connector);
  }

  drivesHavePower(): boolean {
    return this.world.drives.on;
  }

  /** Since the stop button was last pressed something came back that nobody switched on. */
  cameBackByItself(): boolean {
    return this.world.drives.cameBack;
  }

  /** Where the axis really stands, mm, as after a good homing. */
  position(letter: string): number {
    return axisNamed(this.world, letter).stands;
  }

  get switches(): readonly string[] {
    return this.world.contacts.map(({ truth }) => truth.subject);
  }
}

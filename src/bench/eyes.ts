import type { PlugEnd } from '../model/ask.ts';
import { axisNamed, switchNamed } from './named-parts.ts';
import type { Sighting } from './sighting.ts';
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

  /** The little lamp beside the terminal of this switch: lit while current flows through its line. */
  lampIsOn(subject: string): boolean {
    const { line } = switchNamed(this.world, subject);
    return this.world.stage(line.truth.name)?.isConducting ?? false;
  }

  /** Looks at the motion of the machine from now on: what was before is forgotten. */
  watch(): void {
    for (const { carriage } of this.world.axes) carriage.beginSighting();
  }

  /** Which way the tool went over the work since she began to watch: its longest excursion. */
  wayOf(letter: string): 'positive' | 'negative' | 'none' {
    return this.sighting(letter).way;
  }

  /** mm, signed, from where it stood when she began to watch. */
  wayMade(letter: string): number {
    return this.position(letter) - this.sighting(letter).start;
  }

  /** The axes that really moved. */
  get moved(): readonly string[] {
    return this.world.axes.map(({ letter }) => letter).filter((letter) => this.wayOf(letter) !== 'none');
  }

  /** The motor at this axis buzzed or growled without turning. */
  buzzed(letter: string): boolean {
    return this.sighting(letter).buzzed;
  }

  /** The carriage stood on the switch that it homes with. */
  reached(letter: string): boolean {
    return this.sighting(letter).reached;
  }

  /** Having stood on its switch it turned and came back. */
  cameBack(letter: string): boolean {
    return this.sighting(letter).cameBack;
  }

  /** It stands past its switch, where its dog no longer holds it. */
  isPastSwitch(letter: string): boolean {
    return axisNamed(this.world, letter).carriage.isPastHome;
  }

  /** The beam was pulled out of square by more than an eye overlooks. */
  racked(letter: string): boolean {
    return this.sighting(letter).racked > 1.5;
  }

  /** It dropped as it set off. */
  sagged(letter: string): boolean {
    return this.sighting(letter).sagged;
  }

  isMoving(): boolean {
    return this.world.motion.underWay;
  }

  /** The controller shows a halt and starts nothing. */
  isHalted(): boolean {
    return this.world.controller.activity === 'fault';
  }

  private sighting(letter: string): Sighting {
    return axisNamed(this.world, letter).carriage.sighting;
  }

  /** Where the axis really stands, mm, as after a good homing. */
  position(letter: string): number {
    return axisNamed(this.world, letter).stands;
  }

  /** The stop buttons. */
  get stops(): readonly string[] {
    return this.world.contacts.filter(({ truth }) => truth.stop).map(({ truth }) => truth.subject);
  }

  get switches(): readonly string[] {
    return this.world.contacts.map(({ truth }) => truth.subject);
  }
}

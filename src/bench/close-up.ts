import type { MeterDeed } from '../model/deed-names.ts';
import { axisNamed, switchNamed } from './named-parts.ts';
import type { World } from './world.ts';

/** What a closer look, a push of the carriage by hand or a meter at the terminals shows, with the drives off. */
export class CloseUp {
  private readonly world: World;
  private readonly places = new Map<string, number>();

  constructor(world: World) {
    this.world = world;
  }

  /** Something in the settings of its input is not as this machine was built for. */
  hasWrongSetting(subject: string): boolean {
    const { truth } = switchNamed(this.world, subject).line;
    const stage = this.world.stage(truth.name);
    if (!stage) return false;
    const filter = truth.filter ?? 3;
    return !stage.enabled || stage.setting !== truth.setting || stage.debounce !== filter;
  }

  /** Its lever stands in with nothing on it. */
  isHeldByItself(subject: string): boolean {
    const { contact } = switchNamed(this.world, subject).leg;
    return contact.operated && !contact.touched;
  }

  /** As it was built and drawn. */
  isNormallyOpen(subject: string): boolean {
    return switchNamed(this.world, subject).leg.contact.truth.contact === 'normally open';
  }

  /** The axis is pushed by hand until its dog works the switch; whether there is one that does. */
  pushOn(subject: string): boolean {
    const { contact } = switchNamed(this.world, subject).leg;
    const dog = this.world.dogs.find((each) => each.contact === contact);
    const letter = contact.truth.dog?.axis;
    if (!dog || letter === undefined || this.world.drives.on) return false;
    const axis = axisNamed(this.world, letter);
    this.places.set(subject, axis.stands);
    axis.moveTo(dog.actuates + dog.outwards * 0.2);
    return true;
  }

  pushBack(subject: string): void {
    const { contact } = switchNamed(this.world, subject).leg;
    const stood = this.places.get(subject);
    const letter = contact.truth.dog?.axis;
    if (stood === undefined || letter === undefined) return;
    axisNamed(this.world, letter).moveTo(stood);
    this.places.delete(subject);
  }

  /** What a meter shows there; undefined: over range. Ohm, V, mA; cores of a metre or two, blades that are clean. */
  metered(subject: string, where: MeterDeed): number | undefined | 'nothing to measure there' {
    const { line, leg } = switchNamed(this.world, subject);
    const stage = this.world.stage(line.truth.name);
    switch (where) {
      case 'ohms-signal-core':
        return line.core === 'broken' ? undefined : 0.4;
      case 'ohms-common-core':
        return 0.4;
      case 'ohms-signal-to-return':
      case 'ohms-signal-to-plus':
        return undefined;
      case 'ohms-contact-closed':
      case 'ohms-contact-open':
        return leg.contact.conducts ? 0.2 : undefined;
      case 'ohms-pull':
        return stage?.hasPullUp ? 4700 : undefined;
      case 'ohms-returns':
        return 0.1;
      case 'volts-terminal-closed':
      case 'volts-terminal-open':
        return (stage?.millivolts ?? 0) / 1000;
      default:
        return 'nothing to measure there';
    }
  }
}

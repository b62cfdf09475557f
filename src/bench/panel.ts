import type { Axis } from './axis.ts';
import type { Contact } from './contact.ts';
import { type Course, homing, seek, straight } from './courses.ts';
import { axisNamed } from './named-parts.ts';
import type { World } from './world.ts';

/** How far an axis is moved off a switch it stands on, at least, and how far one runs on that starts by itself; mm. */
const offTheSwitch = 5;
const runsOn = 20;
/** How far past a soft limit a target may be by rounding, mm. */
const tolerated = 0.01;

/** The controller's own control, as the person at the machine has it: all motion begins here, and nowhere in the tool. */
export class Panel {
  private readonly world: World;

  constructor(world: World) {
    this.world = world;
  }

  seek(letter: string): void {
    this.begin([axisNamed(this.world, letter)], 'homing', (axis) => seek(axis, this.isActive));
  }

  home(letter: string): void {
    const { axes } = this.world;
    const chosen = letter === 'all' ? [...axes] : [axisNamed(this.world, letter)];
    const inOrder = chosen.sort((a, b) => a.homing.homeOrder - b.homing.homeOrder);
    this.begin(inOrder, 'homing', (axis) => homing(axis, this.isActive), this.world.truth.homesAtOnce);
  }

  /** Once the axis was homed, a target outside its soft limits is refused with a fault and nothing moves. */
  move(letter: string, distance: number, speed?: number): void {
    const axis = axisNamed(this.world, letter);
    const { controller } = this.world;
    if (controller.activity === 'still' && this.isRefused(axis, distance)) controller.activity = 'fault';
    const fastest = axis.truth.rapid;
    this.begin([axis], 'moving', () => straight(axis, distance, Math.min(speed ?? fastest, fastest)));
  }

  clear(): void {
    this.world.motion.stop();
    if (this.world.controller.activity === 'fault') this.world.controller.activity = 'still';
  }

  /** Starts by itself, as nobody asked for. */
  comeBack(): void {
    this.world.drives.cameBack = true;
    this.world.drives.on = true;
    const [axis] = this.world.axes;
    if (axis) this.begin([axis], 'moving', () => straight(axis, runsOn, axis.truth.approach));
  }

  /** Off a switch: by hand where the drives are off, else by the controller. */
  moveOff(contact: Contact): void {
    const dog = this.world.dogs.find((each) => each.contact === contact);
    if (!dog || !contact.touched) return;
    const axis = axisNamed(this.world, contact.truth.dog?.axis ?? '');
    const clear = (axis.stands - dog.frees) * dog.outwards + offTheSwitch / 2;
    const by = -dog.outwards * Math.max(offTheSwitch, clear);
    if (this.world.drives.on) this.begin([axis], 'moving', () => straight(axis, by, axis.truth.approach));
    else axis.moveTo(axis.stands + by);
  }

  /** Farther out than it may be and farther than it is: the way back in stays open. */
  private isRefused({ isHomed, soft, counted }: Axis, distance: number): boolean {
    const target = counted + distance;
    const beyond = target < soft[0] - tolerated ? distance < 0 : target > soft[1] + tolerated && distance > 0;
    return isHomed && beyond;
  }

  /** A controller in fault starts nothing. */
  private begin(
    axes: readonly Axis[],
    as: 'moving' | 'homing',
    course: (axis: Axis) => Course,
    atOnce = false,
  ): void {
    const { controller, motion, quirks, isAtLimit } = this.world;
    if (!controller.powered || controller.activity === 'fault' || (quirks.refusesAtLimit && isAtLimit))
      return;
    const courseOf = (chosen: readonly Axis[]) => inTurn(chosen, course, quirks.beforeMotion);
    const stages = atOnce
      ? byPlace(axes).map((each) => each.map((axis) => courseOf([axis])))
      : [[courseOf(axes)]];
    motion.start(stages, as);
  }

  private readonly isActive = (input: string): boolean => this.world.isActive(input);
}

/** Axes that have one place in the order of homing, together. */
function byPlace(axes: readonly Axis[]): readonly (readonly Axis[])[] {
  const places = [...new Set(axes.map(({ homing }) => homing.homeOrder))];
  return places.map((place) => axes.filter(({ homing }) => homing.homeOrder === place));
}

function* inTurn(
  axes: readonly Axis[],
  course: (axis: Axis) => Course,
  before: readonly ((axis: Axis) => void)[],
): Course {
  for (const axis of axes) {
    for (const each of before) each(axis);
    if (!(yield* course(axis))) return false;
  }
  return true;
}

import type { Carriage } from './carriage.ts';
import type { Drive } from './drive.ts';
import { type HomingSettings, homingSettings } from './homing-settings.ts';
import type { AxisTruth } from './truth.ts';

/** One axis as the controller knows it: its count, its settings, and the motors its pulses go to. Nothing measures what they do. */
export class Axis {
  readonly truth: AxisTruth;
  /** What it carries where every plug is in its place. */
  readonly carriage: Carriage;
  readonly homing: HomingSettings;
  acceleration: number;
  soft: readonly [number, number];
  /** Its motors; other axes' where plugs are crossed. */
  drives: readonly Drive[];
  /** Numbers of the motors that get no pulses: their side has found its switch and waits for the other. */
  readonly waiting = new Set<number>();
  isHomed = false;
  private count = 0;

  constructor(truth: AxisTruth, carriage: Carriage, drives: readonly Drive[]) {
    this.truth = truth;
    this.carriage = carriage;
    this.drives = drives;
    this.homing = homingSettings(truth);
    this.acceleration = truth.acceleration;
    this.soft = truth.soft;
  }

  get letter(): string {
    return this.truth.letter;
  }

  /** mm as told: whole steps. */
  get commanded(): number {
    const { step } = this.truth;
    return Math.round(this.count / step) * step + 0;
  }

  /** mm, between two steps too. */
  get counted(): number {
    return this.count;
  }

  /** mm, true. */
  get stands(): number {
    return this.carriage.stands;
  }

  /** The controller counts on whatever happens; the motors turn where they have power, the rest is theirs. `speed` mm/s without sign. */
  step(by: number, speed: number, powered: boolean): void {
    this.count += by;
    if (!powered) return;
    this.drives.forEach((drive, number) => {
      if (!this.waiting.has(number)) drive.turn(by, speed);
    });
  }

  /** The place where it stands is called `value` from now on. */
  zero(value: number): void {
    this.count = value;
    this.isHomed = true;
  }

  /** Everything counted is gone, as with the supply. */
  forget(): void {
    this.count = 0;
    this.isHomed = false;
  }

  moveTo(position: number): void {
    this.carriage.moveTo(position);
  }
}

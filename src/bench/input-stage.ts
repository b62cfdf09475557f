import type { Active } from '../model/reading.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import { levelAt, type PinLevel } from './circuit-truth.ts';
import type { Random } from './random.ts';
import type { InputTruth, Setting } from './truth.ts';

/** What an input without a pull-up does while nothing holds it: it wanders, and stays each way for so long; ms. */
const wanders: readonly [number, number] = [60, 260];
/** A press this long is more than a press, even where presses are only told when they are over. */
const longPress = ms(1200);
/** How long a press that is over is told. */
const toldFor = ms(150);

/** One input of the controller: from "joined to ground or not" to what its reports say. */
export class InputStage {
  readonly name: string;
  setting: Setting;
  enabled = true;
  /** Left out of the declaration and of every report. */
  reported = true;
  hasPullUp = true;
  /** The pin no longer follows its terminal. */
  dead = false;
  /** Presses are told when they are over. */
  tellsOnRelease = false;
  /** Says while its reports leave out what it does, as if it were at rest. */
  isUntold: () => boolean = () => false;
  /** ms for which a new level must hold before it is taken. */
  debounce: number;
  private readonly circuit: InputTruth['circuit'];
  private readonly time: Timekeeper;
  private readonly random: Random;
  private readonly onLevel: (stage: InputStage) => void;
  private pin: PinLevel = 'L';
  private taken: PinLevel = 'L';
  private told: PinLevel = 'L';
  private conducting = true;
  private volts: number | undefined;
  private takeBack = () => {};
  private takeBackTold = () => {};
  private stopWandering: (() => void) | undefined;

  constructor(truth: InputTruth, time: Timekeeper, random: Random, onLevel: (stage: InputStage) => void) {
    this.name = truth.name;
    this.setting = truth.setting;
    this.circuit = truth.circuit;
    this.debounce = truth.filter ?? 3;
    this.time = time;
    this.random = random;
    this.onLevel = onLevel;
  }

  /** As its reports say. */
  get level(): PinLevel {
    return this.isUntold() ? (this.setting === 'active when open' ? 'L' : 'H') : this.told;
  }

  /** As its reports say. */
  get active(): Active {
    return this.isActive && !this.isUntold() ? '1' : '0';
  }

  /** What the controller acts on. */
  get isActive(): boolean {
    return this.enabled && this.activeAt(this.told);
  }

  get isConducting(): boolean {
    return this.conducting;
  }

  /** At the terminal, as a meter would show it; where a circuit is played, at the pin; mV. */
  get millivolts(): number {
    if (this.circuit && this.volts !== undefined) return Math.round(1000 * this.volts);
    if (this.conducting) return 2;
    return this.hasPullUp ? 4985 : this.pin === 'H' ? 2150 : 640;
  }

  /** The terminal is joined to ground, or not. */
  follow(conducting: boolean): void {
    this.conducting = conducting;
    if (conducting || this.hasPullUp) this.hold(conducting ? 'L' : 'H');
    else this.stopWandering ??= this.wander();
  }

  /** Its pin stands at so many volts; undefined: nothing holds it. */
  stand(volts: number | undefined): void {
    if (!this.circuit) return;
    this.volts = volts;
    if (this.circuit.dead) this.hold(this.circuit.dead);
    else if (volts === undefined) this.stopWandering ??= this.wander();
    else this.hold(levelAt(this.circuit.reads, volts) ?? this.pin);
  }

  private hold(level: PinLevel): void {
    this.sleep();
    this.setPin(level);
  }

  /** Nothing is connected to it any more. */
  sleep(): void {
    this.stopWandering?.();
    this.stopWandering = undefined;
  }

  /** Power came on: takes the level that is there, without waiting. */
  wake(): void {
    this.takeBack();
    this.takeBackTold();
    if (this.dead) return;
    this.taken = this.pin;
    this.told = this.pin;
  }

  private wander(): () => void {
    let goOn = () => {};
    const next = () => {
      goOn = this.time.after(ms(this.random.within(...wanders)), () => {
        this.setPin(this.pin === 'H' ? 'L' : 'H');
        next();
      });
    };
    next();
    return () => goOn();
  }

  private setPin(level: PinLevel): void {
    if (this.pin === level) return;
    this.pin = level;
    if (this.dead) return;
    this.takeBack();
    if (level === this.taken) return;
    if (this.debounce === 0) this.take(level);
    else this.takeBack = this.time.after(ms(this.debounce), () => this.take(level));
  }

  private take(level: PinLevel): void {
    this.taken = level;
    if (!this.tellsOnRelease) this.tell(level);
    else if (this.activeAt(level)) this.takeBackTold = this.time.after(longPress, () => this.tell(level));
    else {
      this.takeBackTold();
      this.tell(level === 'H' ? 'L' : 'H');
      this.takeBackTold = this.time.after(toldFor, () => this.tell(level));
    }
  }

  private tell(level: PinLevel): void {
    if (this.told === level) return;
    this.told = level;
    this.onLevel(this);
  }

  private activeAt(level: PinLevel): boolean {
    return (level === (this.circuit?.reads.open ?? 'H')) === (this.setting === 'active when open');
  }
}

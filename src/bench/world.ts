import type { Timekeeper } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { Axis } from './axis.ts';
import { Carriage } from './carriage.ts';
import { Contact } from './contact.ts';
import { Controller, type Telling } from './controller.ts';
import { Dog } from './dog.ts';
import { Drive } from './drive.ts';
import { FieldLine } from './field-line.ts';
import { InputStage } from './input-stage.ts';
import { Motion } from './motion.ts';
import { PlayedCircuit } from './played-circuit.ts';
import { noQuirks, type Quirks } from './quirks.ts';
import { type Random, randomFor } from './random.ts';
import type { InputTruth, MachineTruth } from './truth.ts';
import { Wiring } from './wiring.ts';

/** A motor without power lets its axis run on against friction, mm/s² (no source: about what a screw drive drags). */
const dragsAt = 1500;

/** All parts of the simulated machine, put together; what each does to the next is only said here. */
export class World {
  readonly truth: MachineTruth;
  readonly time: Timekeeper;
  readonly contacts: readonly Contact[];
  readonly wiring: Wiring;
  readonly stages: readonly InputStage[];
  /** By terminal; undefined where an input is not told by its circuit. */
  private readonly circuits: readonly (PlayedCircuit | undefined)[];
  readonly dogs: readonly Dog[];
  readonly axes: readonly Axis[];
  readonly controller: Controller;
  readonly motion: Motion;
  readonly drives = { on: true, cameBack: false };
  readonly quirks: Quirks = noQuirks();
  private readonly seed: number;
  private readonly endings: (() => void)[] = [];

  constructor(truth: MachineTruth, time: Timekeeper, seed: number, telling: Telling) {
    this.truth = truth;
    this.time = time;
    this.seed = seed;
    this.stages = truth.inputs.map(
      (input) =>
        new InputStage(input, time, this.random(`wander ${input.name}`), () => this.levelChanged(input)),
    );
    const lines = truth.inputs.map(
      (input) =>
        new FieldLine(
          input,
          input.switches.map((each) => this.contact(each)),
        ),
    );
    this.contacts = lines.flatMap((line) => line.legs.map(({ contact }) => contact));
    this.wiring = new Wiring(lines);
    this.circuits = lines.map((line) => this.played(line));
    this.axes = truth.axes.map((axis) => {
      const carriage = new Carriage(axis);
      return new Axis(
        axis,
        carriage,
        Array.from({ length: axis.motors }, (_, side) => new Drive(carriage, side)),
      );
    });
    this.dogs = this.contacts.flatMap((contact) => this.dogOf(contact) ?? []);
    this.controller = new Controller(telling, time, this.stages, this.axes, this.random('link'));
    this.motion = new Motion({
      time,
      powered: () => this.drives.on,
      show: (activity) => {
        if (this.controller.activity !== 'fault') this.controller.activity = activity;
      },
      filterMs: ({ homing }) =>
        Math.max(0, ...homing.inputs.map((input) => this.stage(input)?.debounce ?? 0)),
    });
    for (const { carriage } of this.axes) carriage.worked(0);
    this.refresh();
  }

  random(purpose: string): Random {
    return randomFor(this.seed, purpose);
  }

  /** Works out anew what every terminal sees: to be called after any change of wires and contacts. */
  refresh(): void {
    // While it is still being put together, nothing is connected yet.
    if (!this.controller) return;
    for (const [terminal, stage] of this.stages.entries()) {
      const circuit = this.circuits[terminal];
      if (circuit) stage.stand(circuit.volts);
      else stage.follow(this.wiring.conducts(terminal));
    }
  }

  stage(input: string): InputStage | undefined {
    return this.stages.find(({ name }) => name === input);
  }

  /** Calls `then` again and again, each time after the delay it gave, until the bench is shut down. */
  whileOn(then: () => Millis): void {
    const next = (): (() => void) =>
      this.time.after(then(), () => {
        this.endings[place] = next();
      });
    const place = this.endings.push(() => {}) - 1;
    this.endings[place] = next();
  }

  shutDown(): void {
    this.motion.stop();
    this.controller.powerOff();
    for (const end of this.endings.splice(0)) end();
    for (const stage of this.stages) stage.sleep();
  }

  /** Supply gone and back at once. */
  restart(): void {
    this.powerOff();
    this.controller.powerOn();
  }

  /** Everything counted is lost. */
  powerOff(): void {
    this.motion.stop();
    this.controller.powerOff();
    for (const axis of this.axes) axis.forget();
  }

  /** The drives lose their power: what moved runs on by its own weight, uncounted. */
  cutPower(): void {
    this.drives.on = false;
    this.drives.cameBack = false;
    const { now } = this.motion;
    for (const { axis, velocity } of now)
      axis.moveTo(axis.stands + (velocity * Math.abs(velocity)) / (2 * dragsAt));
  }

  isActive(input: string): boolean {
    return this.stage(input)?.isActive ?? false;
  }

  get isAtLimit(): boolean {
    return this.truth.inputs.some(({ limit, name }) => limit && this.isActive(name));
  }

  private played(line: FieldLine): PlayedCircuit | undefined {
    const { circuit, name } = line.truth;
    if (!circuit) return undefined;
    const played = new PlayedCircuit(circuit, line, this.wiring, this.random(`moments ${name}`));
    if (played.jumps)
      this.whileOn(() => {
        const lasts = ms(played.jump());
        this.refresh();
        return lasts;
      });
    return played;
  }

  private contact(truth: InputTruth['switches'][number]): Contact {
    return new Contact(truth, this.time, this.random(`bounce ${truth.subject}`), () => this.refresh());
  }

  private levelChanged(input: InputTruth): void {
    const stage = this.stage(input.name);
    if (!stage) return;
    this.controller.edge(stage);
    if (!stage.isActive) return;
    const isStop = input.switches.some(({ stop }) => stop);
    if (isStop) this.motion.stop();
    if (input.limit) this.limitTripped(input.name);
  }

  private limitTripped(input: string): void {
    const { motion, quirks } = this;
    const homing = motion.as === 'homing' ? motion.now : [];
    if (quirks.haltsAtLimit && !homing.some(({ axis }) => axis.homing.inputs.includes(input))) {
      motion.halt();
      if (this.controller.powered) this.controller.activity = 'fault';
    } else if (quirks.heedsLimits && homing.length === 0) motion.halt();
  }

  private dogOf(contact: Contact): Dog | undefined {
    const { dog } = contact.truth;
    const carriage = this.axes.find(({ letter }) => letter === dog?.axis)?.carriage;
    if (!dog || !carriage) return undefined;
    const live = new Dog(contact, dog);
    carriage.dogs.push(live);
    return live;
  }
}

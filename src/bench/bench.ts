import type { PlugEnd } from '../model/ask.ts';
import type { Timekeeper } from '../model/source.ts';
import { CloseUp } from './close-up.ts';
import type { Telling } from './controller.ts';
import { Eyes } from './eyes.ts';
import type { LinkQuality } from './link.ts';
import { machineFor } from './machines.ts';
import { switchNamed } from './named-parts.ts';
import { Panel } from './panel.ts';
import { plant } from './plant.ts';
import { RequestEar } from './request-ear.ts';
import type { Shape } from './speaking/shape.ts';
import { speakerFor } from './speaking/speaker.ts';
import type { MachineTruth } from './truth.ts';
import { World } from './world.ts';

export interface BenchOptions {
  /** Left out: a machine on which the faults can be planted. */
  readonly truth?: MachineTruth;
  /** The same seed, faults and hands give the same bytes. */
  readonly seed?: number;
  /** As `--fault` spells them: `<fault>:<input>[,<input>]`. */
  readonly faults?: readonly string[];
  /** Default: 100 reports a second with levels, active and positions; no edges, no voltages. */
  readonly telling?: Partial<Telling>;
  /** Reports in this shape, in words drawn by the seed, instead of native sentences. */
  readonly speak?: Shape;
  /** Default: nothing lost, nothing damaged. */
  readonly link?: Partial<LinkQuality>;
}

const usual: Telling = { rate: 100, levels: true, active: true, positions: true, edges: false, volts: false };
/** The simulated machine as hands meet it. Subjects it does not know are refused with a HandRefused. */
export class Bench {
  private readonly world: World;
  readonly eyes: Eyes;
  readonly closeUp: CloseUp;
  private readonly panel: Panel;
  private readonly ear = new RequestEar();

  /** Throws a ToolError where a fault is not known or does not fit the machine. */
  constructor(time: Timekeeper, options: BenchOptions = {}) {
    const { seed = 1, faults = [], telling = {}, link = {}, speak } = options;
    const { truth = machineFor(faults).truth } = options;
    const own = speak && {
      speaker: speakerFor(speak, truth.inputs.length, truth.axes.length, seed),
      ...(speak.request !== undefined && { request: speak.request }),
    };
    this.world = new World(truth, time, seed, { ...usual, ...own, ...telling });
    Object.assign(this.world.controller.link, link);
    this.panel = new Panel(this.world);
    this.eyes = new Eyes(this.world);
    this.closeUp = new CloseUp(this.world);
    for (const fault of faults) plant(this.world, fault);
    this.world.controller.startAwake();
  }

  /** Hears every sentence from now on, the declaration first. The returned function ends it. */
  attach(hear: (bytes: Uint8Array) => void): () => void {
    const leave = this.world.controller.listen((sentence) => hear(Buffer.from(sentence, 'latin1')));
    this.world.controller.declare();
    return leave;
  }

  /** Bytes from the tool: a whole request makes the controller declare and report once; anything else does nothing. */
  receive(bytes: Uint8Array): void {
    const { request } = this.world.controller.telling;
    if (request !== undefined) {
      if (Buffer.from(bytes).toString('latin1').includes(request)) this.world.controller.report();
      return;
    }
    for (let asked = this.ear.take(bytes); asked > 0; asked--) {
      this.world.controller.declare();
      this.world.controller.report();
    }
  }

  /** Nothing more is sent; no timer is left behind but those of contacts still bouncing. */
  shutDown(): void {
    this.world.shutDown();
  }

  press(subject: string): void {
    const { contact } = switchNamed(this.world, subject).leg;
    contact.push('hand');
    if (!contact.truth.stop || this.world.quirks.powerStaysOn) return;
    this.world.cutPower();
  }

  /** Lets go, unlatches a stop, frees a lever that sticks, moves an axis off a switch it stands on. */
  release(subject: string): void {
    const { contact } = switchNamed(this.world, subject).leg;
    const wasIn = contact.inHand;
    contact.letGo('hand');
    if (contact.truth.stop && wasIn && this.world.quirks.restartsOnUnlatch) this.panel.comeBack();
    this.panel.moveOff(contact);
  }

  unplug(subject: string, at: PlugEnd): void {
    this.setPlug(subject, at, true);
    const { truth } = switchNamed(this.world, subject).line;
    if (this.world.quirks.restartsOnUnplug.delete(truth.name)) this.world.restart();
  }

  replug(subject: string, at: PlugEnd): void {
    this.setPlug(subject, at, false);
  }

  /** Bridges the two terminals of the switch, or the input's terminal at the controller to its ground. */
  setJumper(subject: string, at: PlugEnd, on: boolean): void {
    const { line, leg } = switchNamed(this.world, subject);
    if (at === 'switch') leg.jumpered = on;
    else this.world.wiring.setBridge(this.world.truth.inputs.indexOf(line.truth), on);
    this.world.refresh();
  }

  /** Towards the home end until its input is active; a controller in fault starts nothing. */
  seek(letter: string): void {
    this.panel.seek(letter);
  }

  /** One axis, or all in the order set. */
  home(letter: string): void {
    this.panel.home(letter);
  }

  /** `distance` in mm, signed as the controller counts; `speed` in mm/s, left out: as fast as it positions. */
  move(letter: string, distance: number, speed?: number): void {
    this.panel.move(letter, distance, speed);
  }

  /** The person clears a halt by her own control. */
  clear(): void {
    this.panel.clear();
  }

  power(what: 'motors' | 'controller', to: 'off' | 'on'): void {
    const { controller, drives, contacts, quirks } = this.world;
    if (what === 'motors') {
      const held = contacts.some((contact) => contact.truth.stop && contact.operated);
      drives.on = to === 'on' && (!held || quirks.powerStaysOn);
    } else if (to === 'on') controller.powerOn();
    else this.world.powerOff();
  }

  plant(fault: string): void {
    plant(this.world, fault);
  }

  private setPlug(subject: string, at: PlugEnd, out: boolean): void {
    const { line, leg } = switchNamed(this.world, subject);
    if (at === 'switch') leg.plugged = !out;
    else this.world.wiring.setConnector(line.truth.connector, out);
    this.world.refresh();
  }
}

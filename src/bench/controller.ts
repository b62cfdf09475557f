import type { Active, Activity, Level } from '../model/reading.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import type { InputStage } from './input-stage.ts';
import { carried, type LinkQuality } from './link.ts';
import type { Random } from './random.ts';
import type { Speaker } from './speaking/shape.ts';
import { writeDeclaration, writeEdge, writeStatus, writeVolts } from './stream.ts';

/** What the controller tells, and how often. */
export interface Telling {
  /** Status reports a second. */
  rate: number;
  levels: boolean;
  active: boolean;
  positions: boolean;
  /** Each edge by itself as well, with its own time. */
  edges: boolean;
  /** Input voltages ten times a second. */
  volts: boolean;
  /** Reports in lines of its own instead of native sentences. */
  speaker?: Speaker;
  /** It reports only when these bytes come. */
  request?: string;
}

/** An axis as far as the controller tells of it. */
export interface ToldAxis {
  readonly letter: string;
  readonly commanded: number;
}

const declaresEvery = 5000;
const voltsEvery = 100;
/** From power to the first sentence. */
const bootsFor = ms(400);

/** The controller's telling side: it counts its sentences and its milliseconds from power-on, and sends to whoever listens. */
export class Controller {
  readonly telling: Telling;
  readonly link: LinkQuality = { lost: 0, damaged: 0 };
  activity: Activity = 'still';
  /** Reports nothing while it homes. */
  silentWhileHoming = false;
  private readonly time: Timekeeper;
  private readonly stages: readonly InputStage[];
  private readonly axes: readonly ToldAxis[];
  private readonly random: Random;
  private readonly listeners = new Set<(sentence: string) => void>();
  private seq = 0;
  private bootedAt = 0;
  private nextDue = 0;
  private declaredAt = 0;
  private voltsAt = 0;
  private pending: (() => void) | undefined;
  private awake = false;

  constructor(
    telling: Telling,
    time: Timekeeper,
    stages: readonly InputStage[],
    axes: readonly ToldAxis[],
    random: Random,
  ) {
    this.telling = telling;
    this.time = time;
    this.stages = stages;
    this.axes = axes;
    this.random = random;
  }

  get powered(): boolean {
    return this.pending !== undefined;
  }

  listen(listener: (sentence: string) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  powerOn(): void {
    if (this.pending) return;
    this.pending = this.time.after(bootsFor, () => this.boot());
  }

  powerOff(): void {
    this.pending?.();
    this.pending = undefined;
    this.awake = false;
    this.activity = 'still';
  }

  /** Ready at once, as after a power-on long ago. */
  startAwake(): void {
    this.boot();
  }

  declare(): void {
    if (!this.awake || this.telling.speaker) return;
    this.declaredAt = this.time.now();
    const inputs = this.reported.map(({ name }) => name);
    const axes = this.telling.positions ? this.axes.map(({ letter }) => letter) : [];
    for (const sentence of writeDeclaration({ units: 'mm', axes, inputs })) this.send(sentence);
  }

  report(): void {
    if (!this.awake || (this.silentWhileHoming && this.activity === 'homing')) return;
    const { positions, speaker } = this.telling;
    if (speaker) {
      this.speak(speaker);
      return;
    }
    const levels: Level[] = [];
    const active: Active[] = [];
    for (const stage of this.stages) {
      if (stage.reported && this.telling.levels) levels.push(stage.level);
      if (stage.reported && this.telling.active) active.push(stage.active);
    }
    this.send(
      writeStatus({
        seq: this.seq++,
        ms: this.clock,
        activity: this.activity,
        levels,
        active,
        positions: positions ? this.axes.map((axis) => axis.commanded) : [],
      }),
    );
  }

  private speak(speaker: Speaker): void {
    const lines = speaker({
      inputs: this.reported.map((stage) => stage.active === '1'),
      positions: this.axes.map((axis) => axis.commanded),
      activity: this.activity,
      ms: this.clock,
      seq: this.seq++,
    });
    for (const line of lines) this.send(`${line}\r\n`);
  }

  edge(stage: InputStage): void {
    const index = this.reported.indexOf(stage);
    if (!this.awake || !this.telling.edges || index < 0) return;
    this.send(writeEdge(this.seq++, this.clock * 1000, index, stage.level));
  }

  private get reported(): readonly InputStage[] {
    return this.stages.filter((stage) => stage.reported);
  }

  private get clock(): number {
    return this.time.now() - this.bootedAt;
  }

  private boot(): void {
    this.awake = true;
    this.seq = 0;
    this.bootedAt = this.time.now();
    this.nextDue = this.bootedAt;
    this.voltsAt = this.bootedAt;
    for (const stage of this.stages) stage.wake();
    this.declare();
    this.tick();
  }

  /** Reports are due at fixed moments, so that a late timer delays one of them and not all that follow. */
  private tick(): void {
    const now = this.time.now();
    if (now - this.declaredAt >= declaresEvery) this.declare();
    if (this.telling.request === undefined) this.report();
    if (this.telling.volts && now - this.voltsAt >= voltsEvery) {
      this.voltsAt = now;
      this.send(
        writeVolts(
          this.clock,
          this.reported.map((stage) => stage.millivolts),
        ),
      );
    }
    const period = 1000 / this.telling.rate;
    this.nextDue = Math.max(this.nextDue + period, now);
    this.pending = this.time.after(ms(this.nextDue - now), () => this.tick());
  }

  private send(sentence: string): void {
    if (this.listeners.size === 0) return;
    const arrives = carried(sentence, this.link, this.random);
    if (arrives !== undefined) for (const listener of this.listeners) listener(arrives);
  }
}

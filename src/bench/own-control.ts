import type { Ask, MeasureAsk } from '../model/ask.ts';
import type { Bench } from './bench.ts';
import { calliperReading, DialGauge } from './instruments.ts';
import type { Random } from './random.ts';

type MotionAsk = Extract<Ask, { readonly action: 'seek' | 'home' | 'move' }>;

/** A short way is turned out at the hand wheel over this long, s; a long one goes at the axis's own speed. */
const handWheel = 1.5;

/** A person at her own control: she starts motion there, hits the stop, and holds her instruments against what moved. */
export class OwnControl {
  private readonly bench: Bench;
  private readonly random: Random;
  private readonly gauges = new Map<string, DialGauge>();
  private hit = false;

  constructor(bench: Bench, random: Random) {
    this.bench = bench;
    this.random = random;
  }

  /** What she hit the stop for is over: the button out, the drives on, the halt cleared, and then what was asked. */
  start(ask: MotionAsk): void {
    const { bench } = this;
    this.getOverHit();
    if (bench.eyes.isHalted()) bench.clear();
    bench.eyes.watch();
    if (ask.action === 'seek') bench.seek(ask.axis);
    else if (ask.action === 'home') bench.home(ask.axis);
    else {
      const by = ask.direction === 'positive' ? ask.distance : -ask.distance;
      bench.move(ask.axis, by, ask.distance / handWheel);
    }
  }

  /** Where she has hit the stop: she lets it out and switches the drives on. */
  getOverHit(): void {
    if (!this.hit) return;
    this.hit = false;
    for (const stop of this.bench.eyes.stops) this.bench.release(stop);
    this.bench.power('motors', 'on');
  }

  power(what: 'motors' | 'controller', to: 'off' | 'on'): void {
    if (to === 'on') this.getOverHit();
    this.bench.power(what, to);
  }

  hitStop(): void {
    const [stop] = this.bench.eyes.stops;
    this.hit = true;
    if (stop === undefined) this.bench.power('motors', 'off');
    else this.bench.press(stop);
  }

  /** What her gauge or calliper shows; undefined where she has nothing to measure it with. */
  measured(ask: MeasureAsk): number | undefined {
    if (ask.quantity !== 'distance') return undefined;
    const { where, axis } = ask;
    if (where === 'way of the tool over the work') return calliperReading(this.bench.eyes, axis, this.random);
    // What stands in the controller's settings she does not know by heart.
    if (where !== 'trip on a dial gauge') return undefined;
    const gauge = this.gauges.get(axis) ?? new DialGauge(this.bench.eyes, axis);
    this.gauges.set(axis, gauge);
    return gauge.reading;
  }
}

import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import type { PlugEnd } from '../../src/model/ask.ts';
import type { Timekeeper } from '../../src/model/source.ts';
import { ms } from '../../src/model/units.ts';
import { Workplace } from './virtual-session.ts';

/** Something a hand did at the machine, and when. */
export interface Gesture {
  readonly at: number;
  readonly act: (bench: Bench) => void;
}

/** A bench that remembers every hand laid on it, so that another can be brought to where it stood at any moment. */
export class RememberingBench extends Bench {
  readonly gestures: Gesture[] = [];
  private readonly clock: Timekeeper;

  constructor(time: Timekeeper, options: BenchOptions) {
    super(time, options);
    this.clock = time;
  }

  override press(subject: string): void {
    this.did((bench) => bench.press(subject));
    super.press(subject);
  }

  override release(subject: string): void {
    this.did((bench) => bench.release(subject));
    super.release(subject);
  }

  override unplug(subject: string, at: PlugEnd): void {
    this.did((bench) => bench.unplug(subject, at));
    super.unplug(subject, at);
  }

  override replug(subject: string, at: PlugEnd): void {
    this.did((bench) => bench.replug(subject, at));
    super.replug(subject, at);
  }

  override clear(): void {
    this.did((bench) => bench.clear());
    super.clear();
  }

  override power(what: 'motors' | 'controller', to: 'off' | 'on'): void {
    this.did((bench) => bench.power(what, to));
    super.power(what, to);
  }

  private did(act: (bench: Bench) => void): void {
    this.gestures.push({ at: this.clock.now(), act });
  }
}

/** The machine as the person left it when the program died at `moment`: plugs out or in, power on or off, nothing in her hand. */
export function leftAt(moment: number, options: BenchOptions, gestures: readonly Gesture[]): Workplace {
  const time = virtualTime();
  const bench = new Bench(time, options);
  for (const { at, act } of gestures) if (at < moment) time.after(ms(at), () => act(bench));
  let reached = false;
  time.after(ms(moment), () => {
    reached = true;
  });
  time.run(() => reached);
  for (const subject of bench.eyes.switches) if (bench.eyes.inHand(subject)) bench.release(subject);
  return new Workplace(bench, time);
}

import type { VirtualTime } from '../../src/bench/virtual-time.ts';
import type { Source, SourceEvent } from '../../src/model/source.ts';
import { ms } from '../../src/model/units.ts';

/** A port whose cable can be pulled: what the bench sends meanwhile is heard by nobody, what is written goes nowhere. */
export class PulledCable {
  private hear: ((event: SourceEvent) => void) | undefined;
  private time: VirtualTime | undefined;
  private out = false;

  readonly through = (port: Source, time: VirtualTime): Source => {
    this.time = time;
    return {
      ...port,
      open: (listener) => {
        this.hear = listener;
        return port.open((event) => {
          if (!this.out) listener(event);
        });
      },
      write: (bytes) => {
        if (!this.out) port.write(bytes);
      },
    };
  };

  /** Pulls it `after` ms from now for so many ms. */
  pull(after: number, lasts: number): void {
    this.time?.after(ms(after), () => this.set(true));
    this.time?.after(ms(after + lasts), () => this.set(false));
  }

  private set(out: boolean): void {
    const { hear, time } = this;
    if (!hear || !time || this.out === out) return;
    this.out = out;
    const arrived = time.now();
    hear(out ? { kind: 'lost', arrived, why: 'the cable was pulled' } : { kind: 'opened', arrived });
  }
}

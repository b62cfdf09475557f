import { type State, sameState, sampleOfEdge, stateIn } from '../diagnose/signal/track.ts';
import type { Reading } from '../model/reading.ts';
import type { SignalEvent } from '../model/signal-event.ts';
import type { StreamDescription } from '../model/stream-description.ts';
import { type Millis, ms } from '../model/units.ts';
import type { CaptureFile } from './capture-file.ts';
import { CaptureWalk } from './capture-walk.ts';
import { StreamReader } from './stream-reader.ts';

/** What the inputs did, from the lines of a capture, one line at a time: nothing but the present state of each input is kept. */
export function* signalsIn(
  capture: CaptureFile,
  description: StreamDescription | undefined,
): Generator<SignalEvent> {
  const follower = new SignalFollower();
  let events: SignalEvent[] = [];
  const reading = (each: Reading) => events.push(...follower.take(each));
  const lines = new CaptureWalk(capture, new StreamReader(description), { reading });
  while (lines.take(linesAtOnce) > 0) {
    yield* events;
    events = [];
  }
}

const linesAtOnce = 1000;

const unknown: State = { level: '?', active: '?' };

/** Turns readings into changes on one time line; an input that a report does not tell of is unknown then. */
export class SignalFollower {
  private readonly states = new Map<string, State>();
  private segment = -1;
  /** From the controller's clock to the session's, in this segment. */
  private offset = 0;
  private last = 0;

  take(reading: Reading): readonly SignalEvent[] {
    if (reading.kind === 'gap') {
      this.states.clear();
      return [
        { kind: 'break', at: this.forward(reading.arrived), arrived: reading.arrived, why: reading.why },
      ];
    }
    if (reading.kind === 'edge') {
      const state = sampleOfEdge(reading, this.states.get(reading.input));
      return this.put(reading.input, state, reading, this.timeOf(reading));
    }
    if (reading.kind !== 'status') return [];
    const at = this.timeOf(reading);
    return reading.inputs.flatMap((input) =>
      this.put(input, stateIn(reading, input) ?? unknown, reading, at),
    );
  }

  private put(
    input: string,
    { level, active }: State,
    { arrived }: Reading,
    at: Millis,
  ): readonly SignalEvent[] {
    const before = this.states.get(input);
    if (before && sameState(before, { level, active })) return [];
    this.states.set(input, { level, active });
    return [{ kind: 'change', at: this.forward(at), arrived, input, level, active }];
  }

  private timeOf({ segment, at, arrived }: Extract<Reading, { kind: 'status' | 'edge' }>): Millis {
    if (segment !== this.segment) {
      this.segment = segment;
      this.offset = arrived - at;
    }
    return ms(at + this.offset);
  }

  /** The two clocks drift apart, and an edge may be sent after a later status: time stands still rather than go back. */
  private forward(at: Millis): Millis {
    this.last = Math.max(this.last, at);
    return ms(this.last);
  }
}

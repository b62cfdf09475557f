import { type State, sameState, sampleOfEdge, stateIn, tellsTheSame } from '../diagnose/signal/track.ts';
import type { Reading, StatusReading } from '../model/reading.ts';
import type { Heard } from './operator.ts';

const none: readonly Heard[] = [];

/** The edges in a stream as they come, for a face to show. What an input was before a gap is forgotten. */
export class EdgeListener {
  private readonly states = new Map<string, State>();
  /** The status before, where nothing has come between. */
  private last: StatusReading | undefined;

  take(reading: Reading): readonly Heard[] {
    if (reading.kind === 'gap') this.states.clear();
    if (reading.kind === 'gap' || reading.kind === 'edge') this.last = undefined;
    if (reading.kind === 'edge')
      return this.put(reading.input, sampleOfEdge(reading, this.states.get(reading.input)), reading);
    if (reading.kind !== 'status' || this.isAsBefore(reading)) return none;
    return reading.inputs.flatMap((input) => {
      const state = stateIn(reading, input);
      return state ? this.put(input, state, reading) : none;
    });
  }

  /** Nearly every report tells of every input what the one before told. */
  private isAsBefore(status: StatusReading): boolean {
    const { last } = this;
    this.last = status;
    return last !== undefined && tellsTheSame(last, status);
  }

  private put(input: string, { level, active }: State, { arrived }: Reading): readonly Heard[] {
    const before = this.states.get(input);
    if (before && sameState(before, { level, active })) return none;
    this.states.set(input, { level, active });
    return before ? [{ kind: 'heard', arrived, input, level, active }] : none;
  }
}

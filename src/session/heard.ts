import { type State, sameState, sampleOfEdge, stateIn } from '../diagnose/signal/track.ts';
import type { Reading } from '../model/reading.ts';
import type { Heard } from './operator.ts';

/** The edges in a stream as they come, for a face to show. What an input was before a gap is forgotten. */
export class EdgeListener {
  private readonly states = new Map<string, State>();

  take(reading: Reading): readonly Heard[] {
    if (reading.kind === 'gap') this.states.clear();
    if (reading.kind === 'edge')
      return this.put(reading.input, sampleOfEdge(reading, this.states.get(reading.input)), reading);
    if (reading.kind !== 'status') return [];
    return reading.inputs.flatMap((input) => {
      const state = stateIn(reading, input);
      return state ? this.put(input, state, reading) : [];
    });
  }

  private put(input: string, { level, active }: State, { arrived }: Reading): readonly Heard[] {
    const before = this.states.get(input);
    this.states.set(input, { level, active });
    return before && !sameState(before, { level, active })
      ? [{ kind: 'heard', arrived, input, level, active }]
      : [];
  }
}

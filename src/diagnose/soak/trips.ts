import type { InputName } from '../../model/machine.ts';
import type { Reading, StatusReading } from '../../model/reading.ts';
import { type Millis, ms } from '../../model/units.ts';
import { oneTripWithin, soakHole } from '../limits.ts';
import { agree, knownAfter, type State, sampleOfEdge, stateIn } from '../signal/track.ts';

/** What one input did while nobody touched anything. */
export interface Soaked {
  readonly input: InputName;
  /** How often it left the state it was in at the beginning. */
  readonly trips: number;
  /** It is still away. */
  readonly away: boolean;
}

interface Followed {
  rest: State;
  now: State;
  trips: number;
  /** Controller clock of its last change. */
  changedAt: number;
}

/** Counts, input by input, how often each left its rest, in memory that does not grow with time. */
export class TripCounter {
  private readonly inputs = new Map<InputName, Followed>();
  private before: StatusReading | undefined;
  private watchedFor = 0;
  private breaks = 0;

  take(reading: Reading): void {
    if (reading.kind === 'gap') {
      if (reading.why !== 'opened') this.breaks++;
      this.before = undefined;
      return;
    }
    if (reading.kind === 'edge') {
      const state = sampleOfEdge(reading, this.inputs.get(reading.input)?.now);
      this.put(reading.input, state, reading.at);
    }
    if (reading.kind !== 'status') return;
    const { before } = this;
    this.before = reading;
    if (before?.segment === reading.segment) {
      const hole = reading.at - before.at;
      if (hole > 0 && hole <= soakHole) this.watchedFor += hole;
    }
    for (const input of reading.inputs) {
      const state = stateIn(reading, input);
      if (state) this.put(input, state, reading.at, before === undefined);
    }
  }

  /** How long it was really watched, by the controller's clock. */
  get watched(): Millis {
    return ms(this.watchedFor);
  }

  /** How often the stream broke off. */
  get interruptions(): number {
    return this.breaks;
  }

  get soaked(): readonly Soaked[] {
    return [...this.inputs].map(([input, { trips, rest, now }]) => ({
      input,
      trips,
      away: !agree(rest, now),
    }));
  }

  /** `anew`: the first report after a break, whose change nobody saw happen; it is the new rest. */
  private put(input: InputName, { level, active }: State, at: Millis, anew = false): void {
    const known = this.inputs.get(input);
    const state = knownAfter({ level, active }, anew ? undefined : known?.now);
    if (!known) this.inputs.set(input, { rest: state, now: state, trips: 0, changedAt: -Infinity });
    else if (anew) Object.assign(known, { rest: state, now: state, changedAt: -Infinity });
    else if (!agree(known.now, state)) {
      const leaves = agree(known.now, known.rest);
      if (leaves && at - known.changedAt > oneTripWithin) known.trips++;
      known.now = state;
      known.changedAt = at;
    }
  }
}

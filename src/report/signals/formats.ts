import type { SignalEvent } from '../../model/signal-event.ts';
import type { ReportRecord } from '../record.ts';
import { edges } from './edges.ts';
import { vcd } from './vcd.ts';

/** What a whole session's inputs did, beside its record; too long to be held, so handed over event by event. */
export interface Signals {
  /** Every input the stream ever declared. */
  readonly inputs: readonly string[];
  readonly events: Iterable<SignalEvent>;
}

/** A file that is written piece by piece. */
export interface SignalFile {
  readonly name: string;
  readonly pieces: Iterable<string>;
}

export const signalFormats = {
  vcd: ({ tool, session, machine }, { inputs, events }) => ({
    name: 'inputs.vcd',
    pieces: vcd(
      { toolVersion: tool.version, started: session.started, machine: machine.name, inputs },
      events,
    ),
  }),
  edges: (_record, { events }) => ({ name: 'edges.csv', pieces: edges(events) }),
} satisfies Record<string, (record: ReportRecord, signals: Signals) => SignalFile>;

import type { SignalEvent } from '../model/signal-event.ts';
import { csv } from './csv.ts';
import { html } from './html.ts';
import { json } from './json.ts';
import { markdown } from './markdown.ts';
import type { ReportRecord } from './record.ts';
import { edges } from './signals/edges.ts';
import { vcd } from './signals/vcd.ts';

/** A report file: its name in the session folder and its whole text. */
export interface ReportFile {
  readonly name: string;
  readonly text: string;
}

export type Format = 'md' | 'html' | 'json' | 'csv';
export type FormatName = Format;

/** Each format is a pure function of the record. */
export const formats = {
  md: (record) => ({ name: 'report.md', text: markdown(record) }),
  html: (record) => ({ name: 'report.html', text: html(record) }),
  json: (record) => ({ name: 'report.json', text: json(record) }),
  csv: (record) => ({ name: 'report.csv', text: csv(record) }),
} satisfies Record<Format, (record: ReportRecord) => ReportFile>;

export const formatNames = Object.keys(formats) as readonly Format[];

/** All files of a report, in the order asked for. */
export const reportFiles = (
  record: ReportRecord,
  names: readonly Format[] = formatNames,
): readonly ReportFile[] => names.map((name) => formats[name](record));

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

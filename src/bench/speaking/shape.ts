import type { Activity } from '../../model/reading.ts';

/** What a controller knows when it reports. */
export interface Snapshot {
  readonly inputs: readonly boolean[];
  /** Commanded, mm. */
  readonly positions: readonly number[];
  readonly activity: Activity;
  readonly ms: number;
  readonly seq: number;
}

export const layouts = ['pairs', 'brackets', 'json', 'nested-json', 'columns', 'lines', 'line-each'] as const;
export const inputForms = [
  'figure-each',
  'word-each',
  'figures',
  'decimal',
  'hex',
  'binary',
  'signs',
  'capitals',
  'set',
] as const;

/** One way to lay a report out. Names are drawn, never fixed: two controllers of one shape share no word. */
export interface Shape {
  readonly layout: (typeof layouts)[number];
  readonly inputs: (typeof inputForms)[number];
  /** How positions are written; `twice`: counted from a work zero as well. */
  readonly positions: 'mm' | 'unit' | 'inch' | 'counts' | 'none';
  readonly twice: boolean;
  readonly activity: 'word' | 'number' | 'none';
  /** What counts on and tells nothing. */
  readonly extras: number;
  /** Lines of chatter for one report. */
  readonly chatter: number;
  /** The inputs' figures are the other way round: 0 is active. */
  readonly reversed: boolean;
  /** Reports only when these bytes come; left out: by itself. */
  readonly request?: string;
}

/** Turns what a controller knows into the lines it sends, without their ends. */
export type Speaker = (snapshot: Snapshot) => readonly string[];

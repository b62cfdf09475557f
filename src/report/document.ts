import type { EnvelopeFacts } from '../model/envelope-facts.ts';
import type { AxisTrack } from '../model/motion-facts.ts';
import type { RepeatFacts } from '../model/repeat-facts.ts';
import type { Status, Trace } from '../model/verdict.ts';
import type { StateStudied, WiringAsStudied } from '../model/wiring-study.ts';
import { isMerelySteady, type Judged, statusMark, statusWord } from '../words/verdict-words.ts';
import type { SketchOf } from './drawings/sketch/plan.ts';

/** A report as blocks: Markdown and HTML lay out the same blocks, so that they cannot say different things. */
export interface Section {
  readonly id: string;
  readonly heading: string;
  /** `own-page`: begins on a page of its own in print and cannot be overlooked. */
  readonly stress?: 'own-page';
  readonly blocks: readonly Block[];
}

export type Block =
  | { readonly kind: 'text'; readonly text: string; readonly strong?: true }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered?: true }
  /** Lines that a person copies as they stand. */
  | { readonly kind: 'commands'; readonly lines: readonly string[] }
  | Table
  /** An undefined value is a blank line to be filled in by hand. */
  | { readonly kind: 'fields'; readonly fields: readonly Field[] }
  | { readonly kind: 'headline'; readonly mark: Mark; readonly text: string }
  | {
      readonly kind: 'callout';
      readonly label: string;
      readonly tone: Tone;
      readonly title: string;
      readonly text: string;
    }
  | { readonly kind: 'drawings'; readonly drawings: readonly Drawing[] }
  | { readonly kind: 'schematics'; readonly schematics: readonly SchematicDrawing[] }
  | { readonly kind: 'pictures'; readonly pictures: readonly Picture[] }
  /** An empty frame to draw in by hand. */
  | { readonly kind: 'space' }
  | { readonly kind: 'group'; readonly heading: string; readonly blocks: readonly Block[] };

export interface Table {
  readonly kind: 'table';
  readonly label: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}
export interface Column {
  readonly head: string;
  /** Neighbouring columns of one group share a heading above theirs. */
  readonly group?: string;
  /** Share of the width, in per cent. */
  readonly width?: number;
}
export type Cell = string | readonly string[] | Mark;
export type Field = readonly [label: string, value: string | undefined];
export type Tone = Status | 'quiet';

/** A word with its shape; colour only repeats what they say. */
export interface Mark {
  readonly mark: string;
  readonly word: string;
  readonly tone: Tone;
}

/** An input's circuit in one state, with the voltages computed for it. */
export interface SchematicDrawing {
  readonly title: string;
  readonly wiring: WiringAsStudied;
  readonly state: StateStudied;
}

/** What a motion check saw, to be drawn from typed facts alone. */
export type Picture =
  | { readonly of: 'track'; readonly track: AxisTrack }
  /** A part of a track that stands before it, drawn larger; it says nothing more. */
  | { readonly of: 'close-up'; readonly track: AxisTrack }
  | { readonly of: 'envelope'; readonly facts: EnvelopeFacts }
  | { readonly of: 'repeat'; readonly facts: RepeatFacts }
  | { readonly of: 'sketch'; readonly sketch: SketchOf };

export interface Drawing {
  readonly title: string;
  readonly trace: Trace;
}

export const text = (said: string): Block => ({ kind: 'text', text: said });
export const strong = (said: string): Block => ({ kind: 'text', text: said, strong: true });
export const list = (items: readonly string[]): Block => ({ kind: 'list', items });

export const markOf = (judged: Judged): Mark => ({
  mark: statusMark(judged),
  word: statusWord(judged),
  tone: isMerelySteady(judged) ? 'quiet' : judged.status,
});

export const isMark = (cell: Cell): cell is Mark => typeof cell === 'object' && 'tone' in cell;

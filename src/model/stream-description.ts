import type { AxisLetter, InputName } from './machine.ts';

/** One named value of a text line. `place` counts the values of the line in the order they stand; derived names share a place. */
export interface Field {
  readonly path: string;
  readonly text: string;
  readonly place: number;
}

/** Which lines of a stream are meant; everything left out fits any line. */
export interface LinesMeant {
  /** How many values the line holds. */
  readonly count?: number | undefined;
  /** The name of the line's first value. */
  readonly begins?: string | undefined;
  /** The name of a value that the line holds, wherever it stands. */
  readonly has?: string | undefined;
  /** Names of values and what stands there. */
  readonly values?: Readonly<Record<string, string>> | undefined;
}

/** What of a value is looked at: all of it, a bit of a number, a character, or whether a word or letter is there. */
export type Part =
  | { readonly kind: 'whole' }
  | { readonly kind: 'bit'; readonly base: 2 | 10 | 16; readonly bit: number }
  | { readonly kind: 'character'; readonly index: number; readonly length: number }
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'letter'; readonly letter: string };

/** Where something stands in the stream. */
export interface Spot {
  readonly field: string;
  readonly lines: LinesMeant;
  readonly part: Part;
}

/** Two-valued: what stands there when it is so, and when not. Anything else says nothing. */
export interface InputBinding extends Spot {
  readonly shows: 'active' | 'level';
  readonly active: readonly string[];
  readonly inactive: readonly string[];
}

export interface AxisBinding {
  readonly field: string;
  readonly lines: LinesMeant;
  /** mm (degrees on a rotary axis) for one unit of the field; positive. */
  readonly scale: number;
}

export interface ActivityBinding extends Spot {
  readonly still: readonly string[];
  readonly moving: readonly string[];
  readonly homing: readonly string[];
  readonly fault: readonly string[];
}

export interface StreamRequest {
  /** The bytes to write, as latin1 characters, with whatever ends the line. */
  readonly send: string;
  /** ms between two. */
  readonly every: number;
}

/** How a stream of unknown lines is read: which value of which line is which input, axis, activity. */
export interface StreamDescription {
  readonly stream: string;
  readonly request: StreamRequest | undefined;
  /** How many reports must agree before a change counts: 2 where lines arrive damaged and nothing in them tells. */
  readonly agree: 1 | 2;
  readonly inputs: readonly { readonly name: InputName; readonly at: InputBinding }[];
  readonly axes: readonly { readonly letter: AxisLetter; readonly at: AxisBinding }[];
  readonly activity: ActivityBinding | undefined;
}

/** Whether a word or a letter is there. */
export const present = 'there';
export const absent = 'not there';
const mostFigures = 16;
const written = {
  2: /^(?:0b)?([01]{1,64})$/i,
  10: /^(\d{1,15})$/,
  16: /^(?:0x)?([0-9a-f]{1,16})$/i,
} as const;

/** What of a text stands at a part; undefined where the text cannot be read that way. */
export function partOf(text: string, part: Part): string | undefined {
  switch (part.kind) {
    case 'whole':
      return text;
    case 'bit': {
      const [, figures] = written[part.base].exec(text) ?? [];
      if (figures === undefined) return undefined;
      return bitOf(figures, part.base, part.bit) ? '1' : '0';
    }
    case 'character':
      return text.length === part.length ? text[part.index] : undefined;
    case 'word':
      return text.split(' ').includes(part.word) ? present : absent;
    case 'letter':
      return text.includes(part.letter) ? present : absent;
  }
}

function bitOf(figures: string, base: 2 | 10 | 16, bit: number): boolean {
  if (base === 10) return Math.floor(Number(figures) / 2 ** bit) % 2 === 1;
  const each = base === 2 ? 1 : 4;
  const figure = figures[figures.length - 1 - Math.floor(bit / each)];
  return figure !== undefined && ((Number.parseInt(figure, base) >> (bit % each)) & 1) === 1;
}

/** A number at the beginning of a text, with a unit glued to it or not; undefined for anything else, and for numbers too long to be one. */
export function numberIn(text: string): number | undefined {
  const [all] = /^[-+]?\d{1,15}(?:\.\d{0,15})?(?=[a-z%°]{0,8}$|[a-z]{1,4}\/)/i.exec(text) ?? [];
  return all === undefined || all.replace(/\D/g, '').length > mostFigures ? undefined : Number(all);
}

/** A part that is there or not: where its field is missing from a line that is meant, it is not there. */
export const mayBeMissing = (part: Part): boolean => part.kind === 'word' || part.kind === 'letter';

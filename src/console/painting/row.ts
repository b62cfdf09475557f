import { cellsOf, fitted } from './cells.ts';
import type { Glyphs } from './glyphs.ts';

/** What a stretch of text is, apart from what it says; each has a mark or a word of its own beside any colour. */
export type Tone = 'plain' | 'strong' | 'faint' | 'caution' | 'danger' | 'marked';

export interface Stretch {
  readonly text: string;
  readonly tone: Tone;
}

/** One row of the screen. */
export type Row = readonly Stretch[];

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Canvas extends Size {
  readonly glyphs: Glyphs;
  /** ms on the screen's own clock. */
  readonly now: number;
}

export const row = (text: string, tone: Tone = 'plain'): Row => [{ text, tone }];
export const textOf = (painted: Row): string => painted.map(({ text }) => text).join('');

/** The row cut at the right edge. */
export function clipped(painted: Row, width: number): Row {
  let left = width;
  return painted.map(({ text, tone }) => {
    const kept = cellsOf(text) <= left ? text : fitted(text, left);
    left -= cellsOf(kept);
    return { text: kept, tone };
  });
}

import type { Active, Activity, Level, UnreadableWhy } from '../../model/reading.ts';

/**
 * The native status sentences, framed as NMEA 0183 frames its own: `$`, fields between commas, `*`, two hex digits of XOR, CR LF.
 * Numbers are as sent: clocks wrapped at 2^32, positions in the declared units.
 */
export type Sentence =
  | DeclarationSentence
  | MoreNamesSentence
  | StatusSentence
  | EdgeSentence
  | VoltsSentence;

export interface DeclarationSentence {
  readonly kind: 'declaration';
  readonly units: 'mm' | 'inch';
  readonly axes: readonly string[];
  readonly names: readonly string[];
}

export interface MoreNamesSentence {
  readonly kind: 'more-names';
  readonly first: number;
  readonly names: readonly string[];
}

/** Empty arrays where the field was empty: not reported. */
export interface StatusSentence {
  readonly kind: 'status';
  readonly seq: number;
  readonly ms: number;
  readonly activity: Activity;
  readonly levels: readonly Level[];
  readonly active: readonly Active[];
  readonly positions: readonly (number | undefined)[];
}

export interface EdgeSentence {
  readonly kind: 'edge';
  readonly seq: number;
  readonly us: number;
  readonly input: number;
  readonly level: 'H' | 'L';
}

export interface VoltsSentence {
  readonly kind: 'volts';
  readonly ms: number;
  readonly millivolts: readonly (number | undefined)[];
}

export interface Unreadable {
  readonly kind: 'unreadable';
  readonly why: UnreadableWhy;
}

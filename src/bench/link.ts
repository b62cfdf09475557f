import type { Random } from './random.ts';

/** What the link between controller and tool does to a sentence: shares between 0 and 1. */
export interface LinkQuality {
  /** Reports that never arrive. */
  lost: number;
  /** Sentences in which one byte is changed, dropped or doubled. */
  damaged: number;
}

/** A sentence as it comes out at the far end; undefined where it is lost on the way. */
export function carried(
  sentence: string,
  { lost, damaged }: LinkQuality,
  random: Random,
): string | undefined {
  if (lost > 0 && random.happens(lost)) return undefined;
  return damaged > 0 && random.happens(damaged) ? withOneWrongByte(sentence, random) : sentence;
}

function withOneWrongByte(sentence: string, random: Random): string {
  const at = Math.floor(random.within(0, sentence.length));
  const byte = sentence.charCodeAt(at);
  const flipped = String.fromCharCode(byte ^ (1 << Math.floor(random.within(0, 8))));
  const instead = [flipped, '', sentence.charAt(at).repeat(2)][Math.floor(random.within(0, 3))] ?? '';
  return sentence.slice(0, at) + instead + sentence.slice(at + 1);
}

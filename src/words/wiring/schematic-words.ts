import type { ReadLevel, StateStudied, WiringAsStudied } from '../../model/wiring-study.ts';
import { nodeText } from './node-words.ts';
import { ampText, voltText } from './quantities.ts';
import { readWords } from './study-words.ts';

const levelWords = {
  conducting: 'conducting',
  open: 'open',
  uncertain: 'between the thresholds',
  floats: 'held by nothing',
  shorted: 'shorted',
  cut: 'cut',
  flickers: 'jumping',
} as const satisfies Record<ReadLevel, string>;

/** "seen as conducting, reported inactive". */
export const readingText = ({ level, reported }: StateStudied): string =>
  `seen as ${levelWords[level]}, reported ${readWords[reported]}`;

/** The drawing in words: every reachable node with its voltage, and the current in the signal core. */
export function schematicText(wiring: WiringAsStudied, state: StateStudied): string {
  const nodes = state.volts.flatMap(({ node, volts }) => {
    const words = nodeText(node, wiring);
    return words === undefined ? [] : [`${words} ${volts === undefined ? 'floats' : voltText(volts)}`];
  });
  const amps = state.currents.find(({ part }) => part === 'signal clamp')?.amps ?? 0;
  return `${readingText(state)}; ${nodes.join(', ')}; ${ampText(Math.abs(amps))} in the signal core.`;
}

import { type Random, randomFor } from '../../src/bench/random.ts';
import type { Shape, Snapshot } from '../../src/bench/speaking/shape.ts';
import { speakerFor } from '../../src/bench/speaking/speaker.ts';
import type { StatusReading } from '../../src/model/reading.ts';
import type { StreamDescription } from '../../src/model/stream-description.ts';
import { ms } from '../../src/model/units.ts';
import { describedDecoder } from '../../src/transport/stream/description/described-decoder.ts';

const everything = ['still', 'moving'] as const;

/** A machine in any state at all, far from what was shown while learning. */
const anyState = (random: Random, inputs: number, axes: number, seq: number): Snapshot => ({
  inputs: Array.from({ length: inputs }, () => random.happens(0.4)),
  positions: Array.from({ length: axes }, () => random.within(-300, 300)),
  activity: everything[Math.floor(random.next() * 2)] ?? 'still',
  ms: seq * 20,
  seq,
});

/**
 * What a description gets wrong about the stream it was learned from, told states it has never seen: several inputs at once, positions far
 * away. What it calls unknown is not wrong, but a report of which it says nothing at all is not read.
 */
export function wrongIn(
  description: StreamDescription,
  shape: Shape,
  names: readonly string[],
  letters: readonly string[],
  seed: number,
): readonly string[] {
  const speak = speakerFor(shape, names.length, letters.length, seed);
  const decoder = describedDecoder({ ...description, agree: 1 });
  const random = randomFor(seed, 'any state');
  const wrong = new Set<string>();
  for (let seq = 1; seq <= 120; seq++) {
    let isHeard = false;
    const truth = anyState(random, names.length, letters.length, seq);
    for (const text of speak(truth)) {
      for (const reading of decoder.decode({ arrived: ms(seq * 20), text, cut: 0 }))
        if (reading.kind === 'status') {
          isHeard = true;
          for (const each of wrongAbout(reading, truth, names, letters)) wrong.add(each);
        }
    }
    if (!isHeard && description.inputs.length > 0) wrong.add(`deaf while ${truth.activity}`);
    // Lines of one report belong together.
    for (const reading of decoder.gap(ms(seq * 20 + 10), 'lost-port'))
      if (reading.kind === 'status') wrong.add('late report');
  }
  return [...wrong];
}

function wrongAbout(
  status: StatusReading,
  truth: Snapshot,
  names: readonly string[],
  letters: readonly string[],
): readonly string[] {
  const inputs = status.inputs.filter((name, i) => {
    const is = truth.inputs[names.indexOf(name)] ? '1' : '0';
    const told = status.active[i];
    return told !== '?' && told !== is;
  });
  const axes = status.axes.filter((letter, i) => {
    const told = status.positions[i];
    const at = truth.positions[letters.indexOf(letter)] ?? 0;
    return told !== undefined && Math.abs(told - at) > 0.05 + Math.abs(at) * 0.01;
  });
  const doing = status.activity !== '?' && status.activity !== truth.activity ? ['activity'] : [];
  return [...inputs, ...axes, ...doing];
}

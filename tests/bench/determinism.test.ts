import { describe, expect, it } from 'vitest';
import { stand } from './stand.ts';

/** A minute on the bench: presses, a pull, a homing. */
function minute(seed: number, faults: readonly string[]): string {
  const { bench, wait, lines } = stand({ seed, faults, telling: { edges: true, volts: true } });
  for (const subject of bench.eyes.switches) {
    bench.press(subject);
    wait(730);
    bench.release(subject);
    wait(411);
  }
  bench.unplug('probe', 'switch');
  wait(5000);
  bench.replug('probe', 'switch');
  bench.home('Z');
  wait(30_000);
  return lines.map(({ arrived, text }) => `${arrived} ${text}`).join('');
}

const shaky = ['chatters:x-home', 'flickers:y-home', 'floating:probe', 'lost-reports', 'noisy-line'];

describe('the bench', () => {
  it('sends the same bytes at the same moments for the same seed, faults and hands', () => {
    expect(minute(7, shaky)).toBe(minute(7, shaky));
  });

  it('sends others for another seed', () => {
    expect(minute(7, shaky)).not.toBe(minute(8, shaky));
  });

  it('leaves the rest of the machine as it was where one thing is planted', () => {
    const edgesOf = (text: string, input: number) =>
      [...text.matchAll(/^(\S+) \$PTWRE,\d+,\d+,(\d),([HL])/gm)]
        .filter(([, , index]) => Number(index) === input)
        .map(([, at, , level]) => `${at} ${level}`);
    const sound = minute(7, []);
    const planted = minute(7, ['chatters:x-home', 'flickers:y-home']);
    for (const input of [1, 3, 4, 5, 6, 7]) expect(edgesOf(planted, input)).toEqual(edgesOf(sound, input));
    expect(edgesOf(planted, 2)).not.toEqual(edgesOf(sound, 2));
  });
});

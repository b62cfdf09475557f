import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';
import { otherInput, ownInput } from './circuit-machines.ts';

/** What the reports say of an input throughout a state: one thing, or now this and now that. */
export type Steadily = '0' | '1' | 'both';

/** The input as it is, looked at on the bench alone, by script and without any of the program that judges it. */
export interface AsItIs {
  readonly rest: Steadily;
  readonly pressed: Steadily;
  readonly letGo: Steadily;
  readonly out: Steadily;
  /** What the input beside it says while only this one's switch and plug are handled; '0' where there is none. */
  readonly beside: Steadily;
}

type State = 'rest' | 'pressed' | 'letGo' | 'out' | 'back';
/** Three presses, then the plug out and in and one press more: ms from the start, what is done, and what lasts from then on. */
const script: readonly (readonly [after: number, state: State, act: (bench: Bench) => void])[] = [
  [0, 'rest', () => {}],
  ...[4000, 6000, 8000].flatMap(
    (at) =>
      [
        [at, 'pressed', (bench: Bench) => bench.press(ownInput)],
        [at + 1000, 'letGo', (bench: Bench) => bench.release(ownInput)],
      ] as const,
  ),
  [10_000, 'back', (bench) => bench.release(ownInput)],
  [11_000, 'out', (bench) => bench.unplug(ownInput, 'switch')],
  [14_000, 'back', (bench) => bench.replug(ownInput, 'switch')],
];
const ends = 14_500;
/** After each change the slowest filter and the bounce of the contact are waited for; ms. */
const settles = 200;

export function asItIs(options: BenchOptions): AsItIs {
  const time = virtualTime();
  const bench = new Bench(time, options);
  const seen: Record<State, Set<string>> = {
    rest: new Set(),
    pressed: new Set(),
    letGo: new Set(),
    out: new Set(),
    back: new Set(),
  };
  const beside = new Set<string>();
  let [state, since]: [State, number] = ['rest', 0];
  const names = options.truth?.inputs.map(({ name }) => name) ?? [];
  const leave = bench.attach((bytes) => {
    const [sentence, , , , , active = ''] = Buffer.from(bytes).toString('latin1').split(',');
    if (sentence !== '$PTWRS' || time.now() - since < settles) return;
    seen[state].add(active[names.indexOf(ownInput)] ?? '?');
    if (names.includes(otherInput)) beside.add(active[names.indexOf(otherInput)] ?? '?');
  });
  for (const [after, next, act] of script)
    time.after(ms(after), () => {
      [state, since] = [next, after];
      act(bench);
    });
  const over = { yet: false };
  time.after(ms(ends), () => {
    over.yet = true;
  });
  time.run(() => over.yet);
  leave();
  bench.shutDown();
  return {
    rest: steadily(seen.rest),
    pressed: steadily(seen.pressed),
    letGo: steadily(seen.letGo),
    out: steadily(seen.out),
    beside: beside.size === 0 ? '0' : steadily(beside),
  };
}

function steadily(said: ReadonlySet<string>): Steadily {
  if (said.size > 1) return 'both';
  return said.has('1') ? '1' : '0';
}

/** Reads otherwise, at rest, pressed, let go or unplugged, than a switch that does its duty on the same board. */
export const isVisible = (it: AsItIs, sound: AsItIs): boolean =>
  it.rest !== '0' || it.pressed !== '1' || it.letGo !== '0' || it.out !== sound.out || it.beside !== '0';

/**
 * A press does not surely show, on its own input; or rest shows already what a press should, so that a press tells nothing more; or a
 * broken wire is no longer told where a sound one would be told.
 */
export const isDangerous = (it: AsItIs, sound: AsItIs): boolean =>
  it.pressed !== '1' || it.rest !== '0' || (sound.out === '1' && it.out !== '1');

import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';
import { comesAndGoes, otherInput, ownInput } from './circuit-machines.ts';

/** What the reports say of an input through one window: one thing, or now this and now that. */
export type Said = '0' | '1' | 'both';

/** The input as it is, looked at on the bench alone, by script and without any of the program that judges it; window by window. */
export interface AsItIs {
  readonly rest: readonly Said[];
  /** From the finger on the switch until it is off. */
  readonly pressed: readonly Said[];
  /** The same presses for somebody who does not see the finger: active once and over, not at all, or more often. */
  readonly looks: readonly Said[];
  readonly letGo: readonly Said[];
  readonly out: readonly Said[];
  /** What the input beside it says through each press; nothing where there is none. */
  readonly beside: readonly Said[];
}

interface Sample {
  readonly at: number;
  readonly own: string;
  readonly beside: string | undefined;
}

/** ms: what comes and goes is looked at often enough to tell whether it always shows. */
const often = { rest: 6, presses: 12, out: 10 };
const once = { rest: 1, presses: 2, out: 1 };
const restLasts = 2000;
const pressLasts = 900;
const outLasts = 1200;
/** After each change the slowest filter and the bounce of the contact are waited for. */
const settles = 200;

export function asItIs(options: BenchOptions): AsItIs {
  const times = comesAndGoes(options) ? often : once;
  const time = virtualTime();
  const bench = new Bench(time, options);
  const samples: Sample[] = [];
  const names = options.truth?.inputs.map(({ name }) => name) ?? [];
  const leave = bench.attach((bytes) => {
    const [sentence, , , , , active = ''] = Buffer.from(bytes).toString('latin1').split(',');
    if (sentence === '$PTWRS')
      samples.push({
        at: time.now(),
        own: active[names.indexOf(ownInput)] ?? '?',
        beside: active[names.indexOf(otherInput)],
      });
  });
  const wait = (lasts: number): readonly Sample[] => {
    const from = samples.length;
    const over = { yet: false };
    time.after(ms(lasts), () => {
      over.yet = true;
    });
    time.run(() => over.yet);
    return samples.slice(from);
  };
  const settled = (lasts: number): readonly Sample[] => {
    wait(settles);
    return wait(lasts);
  };
  const own = (some: readonly Sample[]): Said => saidIn(some.map((each) => each.own));
  wait(settles);
  const rest = Array.from({ length: times.rest }, () => own(wait(restLasts)));
  const presses = Array.from({ length: times.presses }, () => {
    bench.press(ownInput);
    const coming = wait(settles);
    const held = wait(pressLasts);
    bench.release(ownInput);
    const going = wait(settles);
    return { held, whole: [...coming, ...held, ...going], after: wait(pressLasts) };
  });
  bench.release(ownInput);
  wait(settles);
  bench.unplug(ownInput, 'switch');
  const out = [own(settled(outLasts)), ...Array.from({ length: times.out - 1 }, () => own(wait(outLasts)))];
  leave();
  bench.shutDown();
  return {
    rest,
    pressed: presses.map(({ held }) => own(held)),
    looks: presses.map(({ whole }) => lampIn(whole)),
    letGo: presses.map(({ after }) => own(after)),
    out,
    beside: presses.flatMap(({ whole }) => {
      const theirs = whole.flatMap((each) => each.beside ?? []);
      return theirs.length === 0 ? [] : [saidIn(theirs)];
    }),
  };
}

function saidIn(values: readonly string[]): Said {
  if (new Set(values).size > 1) return 'both';
  return values[0] === '1' ? '1' : '0';
}

function lampIn(samples: readonly Sample[]): Said {
  const lit = samples.filter(({ own }, at) => own === '1' && samples[at - 1]?.own !== '1').length;
  return lit === 0 ? '0' : lit === 1 ? '1' : 'both';
}

const unlike = (said: readonly Said[], right: Said | undefined): boolean[] =>
  said.map((each) => each !== right);

/** Each state, window by window: does it read otherwise than of a switch that does its duty on the same board? */
const deviations = (
  it: AsItIs,
  sound: AsItIs,
): Readonly<Record<keyof Omit<AsItIs, 'pressed'>, boolean[]>> => ({
  rest: unlike(it.rest, '0'),
  looks: unlike(it.looks, '1'),
  letGo: unlike(it.letGo, '0'),
  out: unlike(it.out, sound.out[0]),
  beside: unlike(it.beside, '0'),
});

const always = (windows: readonly boolean[]): boolean => windows.length > 0 && windows.every(Boolean);

/** Some state of rest, presses or unplugging reads otherwise every time it is looked at. */
export const isVisible = (it: AsItIs, sound: AsItIs): boolean =>
  Object.values(deviations(it, sound)).some(always);

/** Reads otherwise now and then, and is as good as sound in between: whoever looks three times may see it or not. */
export const isVisibleAtTimes = (it: AsItIs, sound: AsItIs): boolean =>
  !isVisible(it, sound) && Object.values(deviations(it, sound)).some((windows) => windows.includes(true));

/**
 * A press does not surely show, on its own input, as long as it lasts; or rest shows already what a press should, so that a press tells
 * nothing more; or a broken wire is no longer told where a sound one would be told.
 */
export const isDangerous = (it: AsItIs, sound: AsItIs): boolean =>
  it.pressed.some((said) => said !== '1') ||
  it.rest.some((said) => said !== '0') ||
  (sound.out[0] === '1' && it.out.some((said) => said !== '1'));

/** What a check that says proved thereby says, and the input never does. */
export const belies = {
  rest: ({ rest }) => always(rest.map((said) => said === 'both')),
  press: ({ rest, looks, beside }) =>
    [unlike(rest, '0'), unlike(looks, '1'), unlike(beside, '0')].some(always),
  'open-wire': ({ rest, out }) => [unlike(rest, '0'), unlike(out, '1')].some(always),
} as const satisfies Record<string, (it: AsItIs) => boolean>;

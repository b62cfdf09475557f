import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';

/** One status sentence, taken apart by its commas alone. */
export interface Told {
  readonly arrived: number;
  readonly seq: number;
  readonly ms: number;
  readonly activity: string;
  readonly levels: string;
  readonly active: string;
  readonly positions: readonly number[];
}

/** A bench in virtual time with a listener on it. */
export function stand(options: BenchOptions = {}) {
  const time = virtualTime();
  const bench = new Bench(time, options);
  const lines: { readonly arrived: number; readonly text: string }[] = [];
  const leave = bench.attach((bytes) =>
    lines.push({ arrived: time.now(), text: Buffer.from(bytes).toString('latin1') }),
  );

  const wait = (span: number): void => {
    let over = false;
    time.after(ms(span), () => {
      over = true;
    });
    time.run(() => over);
  };
  /** Until nothing is commanded to move any more; an hour at most. */
  const settle = (): void => {
    const latest = time.now() + 3_600_000;
    time.run(() => !bench.eyes.isMoving() || time.now() > latest);
    if (bench.eyes.isMoving()) throw new Error('it does not come to rest');
    wait(300);
  };
  const told = (): readonly Told[] => lines.filter(({ text }) => text.startsWith('$PTWRS')).map(toldBy);
  const names = (): readonly string[] => {
    const declaration = lines.findLast(({ text }) => text.startsWith('$PTWRD'))?.text ?? '';
    return (/,([^,]*)\*/.exec(declaration)?.[1] ?? '').split(' ');
  };
  const last = (): Told => {
    const found = told().at(-1);
    if (!found) throw new Error('nothing told yet');
    return found;
  };
  return {
    time,
    bench,
    lines,
    leave,
    wait,
    settle,
    told,
    names,
    last,
    level: (input: string) => last().levels[names().indexOf(input)],
    active: (input: string) => last().active[names().indexOf(input)],
    /** The level of one input in every status from now on, for so long. */
    watch(input: string, span: number): string {
      const from = told().length;
      wait(span);
      return told()
        .slice(from)
        .map(({ levels }) => levels[names().indexOf(input)])
        .join('');
    },
  };
}

function toldBy({ arrived, text }: { arrived: number; text: string }): Told {
  const fields = text.slice(0, text.indexOf('*')).split(',');
  const [, seq, at, activity = '', levels = '', active = '', ...positions] = fields;
  return {
    arrived,
    seq: Number(seq),
    ms: Number(at),
    activity,
    levels,
    active,
    positions: positions.map(Number),
  };
}

/** How often a row of levels changes. */
export const changesIn = (levels: string): number =>
  [...levels].filter((level, i) => i > 0 && level !== levels[i - 1]).length;

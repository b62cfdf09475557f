import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { benchSource } from '../../src/bench/bench-source.ts';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { type HandsOptions, simulatedHands } from '../../src/bench/simulated-hands.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import type { Ask } from '../../src/model/ask.ts';
import type { Machine } from '../../src/model/machine.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import type { Source, Timekeeper } from '../../src/model/source.ts';
import type { StreamRequest } from '../../src/model/stream-description.ts';
import { ms } from '../../src/model/units.ts';
import type { LearnOutcome } from '../../src/session/learning/course.ts';
import { runLearning } from '../../src/session/learning/run.ts';
import type { Reply } from '../../src/session/operator.ts';

export interface LearnStand {
  readonly bench: BenchOptions;
  readonly hands?: HandsOptions;
  readonly request?: StreamRequest;
  readonly machine?: Machine;
  /** How many times as long as usual she takes for everything she does and says. */
  readonly pace?: number;
  /** Turns each line of the controller into others. */
  readonly through?: (line: string) => readonly string[];
}
export interface LearnRun {
  readonly outcome: LearnOutcome;
  readonly asks: readonly Ask[];
  readonly capture: readonly string[];
}

const read = readMachineFile(scenarioFile);
if (!read.machine) throw new Error('the scenario reads');
export const scenarioMachine = read.machine;

/** One learning from opening the port to its end, in virtual time, by simulated hands. */
export async function learnOn({
  bench: options,
  hands,
  request,
  machine = scenarioMachine,
  pace = 1,
  through,
}: LearnStand): Promise<LearnRun> {
  const time = virtualTime();
  const bench = new Bench(time, options);
  const asks: Ask[] = [];
  const capture: string[] = [];
  let take: (reply: Reply) => void = () => {};
  const person = simulatedHands(
    bench,
    atPace(time, pace),
    (id, answer) => take({ kind: 'answer', id, answer }),
    hands,
  );
  const source = through ? retold(benchSource(bench, time), through) : benchSource(bench, time);
  let over = false;
  const running = runLearning({
    source: {
      ...source,
      close: () => {
        over = true;
        return source.close();
      },
    },
    time,
    machine,
    request,
    capture: (line) => capture.push(line),
    face: {
      start: (given) => {
        take = given;
      },
      show: (event) => {
        if (event.kind !== 'ask') return;
        asks.push(event.ask);
        person.asked(event.id, event.ask);
      },
      close: () => {},
    },
  });
  const end = () => {
    over = true;
  };
  running.then(end, end);
  for (let quiet = 0; !over && quiet < 100; quiet++) {
    await new Promise(setImmediate);
    time.run(() => over);
  }
  person.leave();
  bench.shutDown();
  return { outcome: await running, asks, capture };
}

/** A clock that runs so many times slower. */
const atPace = ({ now, after }: Timekeeper, pace: number): Timekeeper => ({
  now: () => ms(now() / pace),
  after: (delay, then) => after(ms(delay * pace), then),
});

/** A port whose lines are rewritten on their way; the bench sends each by itself. */
const retold = (source: Source, through: (line: string) => readonly string[]): Source => ({
  ...source,
  open: (hear) =>
    source.open((event) => {
      if (event.kind !== 'bytes') return hear(event);
      const line = Buffer.from(event.bytes)
        .toString('latin1')
        .replace(/\r?\n$/, '');
      for (const each of through(line)) hear({ ...event, bytes: Buffer.from(`${each}\r\n`, 'latin1') });
    }),
});

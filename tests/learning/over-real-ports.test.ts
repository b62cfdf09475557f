import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import { Bench } from '../../src/bench/bench.ts';
import { serveBench } from '../../src/bench/serve.ts';
import { simulatedHands } from '../../src/bench/simulated-hands.ts';
import type { Timekeeper } from '../../src/model/source.ts';
import { ms } from '../../src/model/units.ts';
import { runLearning } from '../../src/session/learning/run.ts';
import type { Reply } from '../../src/session/operator.ts';
import { openPort } from '../../src/transport/open-port.ts';
import { realTime } from '../../src/transport/real-time.ts';
import { describeWithSocat } from '../transport/socat.ts';
import { inputs, letters, shapeNames, shapeUnder } from './corpus.ts';
import { papersOf } from './oracle.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { scenarioMachine } from './stand.ts';
import { wrongIn } from './wrong-bindings.ts';

/** Real bytes through real ports, and everything, the person included, so many times as fast as in life. */
const haste = 10;
const hasty: Timekeeper = {
  now: () => ms(realTime.now() * haste),
  after: (delay, then) => realTime.after(ms(delay / haste), then),
};
/** All shapes with REAL_PORTS=all; else two over each kind of port, others in every run. */
const sample = process.env['REAL_PORTS'] === 'all' ? shapeNames.length : 2;
const drawn = (from: number) =>
  Array.from({ length: sample }, (_, i) => shapeNames[(runSeed + from + i) % shapeNames.length] ?? '');

/** A busy computer may hold the person's hand up for so long that a press passes between two reports: such a learning is begun anew. */
const retry = 2;
const wrongEver: string[] = [];

async function learnedOver(serve: string, name: string, seed: number) {
  const speak = shapeUnder(name, {});
  const bench = new Bench(hasty, { speak, seed, telling: { rate: 20 } });
  const serving = await serveBench({
    serve,
    bench,
    time: hasty,
    stdin: new PassThrough(),
    stdout: { write: () => {} },
  });
  let take: (reply: Reply) => void = () => {};
  const person = simulatedHands(bench, hasty, (id, answer) => take({ kind: 'answer', id, answer }), {
    seed,
    saysInstead: papersOf(speak, inputs.length, letters.length, seed),
  });
  try {
    const { description } = await runLearning({
      source: openPort(serving.port, { baud: 115200, time: hasty }),
      time: hasty,
      machine: scenarioMachine,
      request: speak.request === undefined ? undefined : { send: speak.request, every: 50 },
      capture: () => {},
      face: {
        start: (given) => {
          take = given;
        },
        show: (event) => {
          if (event.kind === 'ask') person.asked(event.id, event.ask);
        },
        close: () => {},
      },
    });
    const wrong = wrongIn(description, speak, inputs, letters, seed);
    wrongEver.push(...wrong.map((each) => `${name} ${seed} ${each}`));
    return {
      wrong,
      inputs: description.inputs.map((each) => each.name),
      axes: description.axes.map((each) => each.letter),
    };
  } finally {
    person.leave();
    await serving.close();
  }
}

// Side by side: they mostly wait.
it.concurrent.each(drawn(0).map((name, i) => [name, runSeed + 600 + i] as const))(
  '%s is learned over tcp',
  { timeout: 240_000, retry },
  async (name, seed) => {
    const learned = await learnedOver('tcp://127.0.0.1:0', name, seed);
    expect(learned, drawnFrom(seed)).toEqual({ wrong: [], inputs, axes: letters });
  },
);

describeWithSocat('over a pseudo terminal and the native serial binding', () => {
  it.concurrent.each(drawn(sample).map((name, i) => [name, runSeed + 700 + i] as const))(
    '%s is learned',
    { timeout: 240_000, retry },
    async (name, seed) => {
      const learned = await learnedOver('pty', name, seed);
      expect(learned, drawnFrom(seed)).toEqual({ wrong: [], inputs, axes: letters });
    },
  );
});

it('however busy the computer was, nothing was bound wrongly', () => {
  expect(wrongEver).toEqual([]);
});

import { Bench } from '../bench/bench.ts';
import { benchSource } from '../bench/bench-source.ts';
import { machineFor } from '../bench/machines.ts';
import { pacedTime } from '../bench/paced-time.ts';
import { scenarioFile } from '../bench/scenario.ts';
import { simulatedHands } from '../bench/simulated-hands.ts';
import { spoken } from '../bench/speaking/named.ts';
import { virtualTime } from '../bench/virtual-time.ts';
import type { Machine } from '../model/machine.ts';
import type { Source, Timekeeper } from '../model/source.ts';
import type { Face } from '../session/operator.ts';
import { realTime } from '../transport/real-time.ts';
import { makeFace } from './choose-face.ts';
import { HandsFace } from './hands-face.ts';
import { type BenchHands, HandsPanel } from './hands-panel.ts';
import type { FaceName } from './options.ts';

export { mustBeFound, planted } from '../bench/demo.ts';

/** The machine file of the built-in bench. */
export const benchMachineText = scenarioFile;

/** The machine file of the bench on which these faults are planted: some need a beam of two motors, or a turning axis. */
export const benchMachineWith = (faults: readonly string[]): string => machineFor(faults).file;

export interface WiredBench {
  readonly source: Source;
  readonly time: Timekeeper;
  readonly face: Face;
}

/**
 * The bench in real time. On the screen the person's keys are the hands; at the other faces simulated hands do and answer
 * what is asked.
 */
export async function benchForPerson(
  faults: readonly string[],
  faceName: FaceName,
  wishes: { readonly machine: Machine; readonly color: boolean },
  speak?: string,
): Promise<WiredBench> {
  const bench = new Bench(pacedTime(realTime), { faults, ...spoken(speak) });
  const source = benchSource(bench, realTime);
  const closed = { ...source, close: () => source.close().then(() => bench.shutDown()) };
  if (faceName === 'screen') {
    const face = await makeFace('screen', { ...wishes, panel: new HandsPanel(handsOf(bench)) });
    return { source: closed, time: realTime, face };
  }
  const shown = await makeFace(faceName, wishes);
  const face = new HandsFace(shown, (answer) => simulatedHands(bench, realTime, answer));
  return { source: closed, time: realTime, face };
}

/** The bench in real time with nobody at it. */
export function benchAlone(faults: readonly string[], speak?: string): Source {
  const bench = new Bench(pacedTime(realTime), { faults, ...spoken(speak) });
  const source = benchSource(bench, realTime);
  return { ...source, close: () => source.close().then(() => bench.shutDown()) };
}

/** The bench and its simulated hands in virtual time. `pass` lets time go by until the work is done. */
export function benchInVirtualTime(faults: readonly string[], shown?: Face) {
  const time = virtualTime();
  const bench = new Bench(time, { faults });
  const face = new HandsFace(shown, (answer) => simulatedHands(bench, time, answer));
  return { source: benchSource(bench, time), time, face, pass: passing(time.run) };
}

/** Virtual time holds the thread; now and then what waits for a promise has its turn. */
const eventsATurn = 2000;

function passing(run: (until: () => boolean) => boolean) {
  return async <Result>(work: Promise<Result>): Promise<Result> => {
    let over = false;
    const end = () => {
      over = true;
    };
    work.then(end, end);
    while (!over) {
      let left = eventsATurn;
      run(() => left-- <= 0);
      await new Promise(setImmediate);
    }
    return work;
  };
}

const handsOf = (bench: Bench): BenchHands => ({
  switches: bench.eyes.switches,
  press: (subject) => bench.press(subject),
  release: (subject) => bench.release(subject),
  setPlug: (subject, at, out) => (out ? bench.unplug(subject, at) : bench.replug(subject, at)),
  setMotorPower: (on) => bench.power('motors', on ? 'on' : 'off'),
  clear: () => bench.clear(),
  inHand: (subject) => bench.eyes.inHand(subject),
  isOut: (subject, at) => bench.eyes.isOut(subject, at),
  hasMotorPower: () => bench.eyes.drivesHavePower(),
});

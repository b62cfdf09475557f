import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/bench/bench.ts';
import { type CircuitTruth, levelAt, type Moment, type Reads } from '../../src/bench/circuit-truth.ts';
import type { InputTruth } from '../../src/bench/truth.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';

// 0.3 and 0.6 of 5 V: ATmega328P data sheet, from memory.
const reads: Reads = { kind: 'threshold', falls: 1.5, rises: 3, open: 'H' };
/** In and closed, in and open, then out at the switch and at the controller. */
const alone = (closed: number | null, open: number | null, out: number | null): Moment =>
  [closed, open, out, out, out, out].map((volts) => [volts]);

const input = (name: string, circuit: CircuitTruth): InputTruth => ({
  name,
  connector: name,
  joined: 'single',
  setting: 'active when open',
  limit: false,
  switches: [{ subject: name, contact: 'normally closed', stop: false }],
  circuit,
});

/** Levels and active bits of every report while `act` is done, one by one in the middle of each second. */
function reported(
  inputs: readonly InputTruth[],
  ...acts: readonly ((bench: Bench) => void)[]
): readonly string[] {
  const time = virtualTime();
  const bench = new Bench(time, { truth: { inputs, axes: [] }, telling: { rate: 20 } });
  const seconds: Set<string>[] = [];
  const leave = bench.attach((bytes) => {
    const [sentence, , , , levels, active] = Buffer.from(bytes).toString('latin1').split(/[,*]/);
    const since = time.now() % 1000;
    if (sentence === '$PTWRS' && since >= 200) seconds.at(-1)?.add(`${levels} ${active}`);
  });
  for (const act of [() => {}, ...acts]) {
    seconds.push(new Set());
    act(bench);
    const end = time.now() + 1000;
    const over = { yet: false };
    time.after(ms(end - time.now()), () => {
      over.yet = true;
    });
    time.run(() => over.yet);
  }
  leave();
  bench.shutDown();
  return seconds.map((each) => (each.size === 1 ? [...each].join() : 'changes'));
}

const press = (bench: Bench) => bench.press('x');
const release = (bench: Bench) => bench.release('x');
const unplug = (bench: Bench) => bench.unplug('x', 'switch');

describe('an input played by the volts at its pin', () => {
  it('follows its contact and its plug', () => {
    const sound = input('x', { reads, moments: [alone(0.001, 5, 5)] });
    expect(reported([sound], press, release, unplug)).toEqual(['L 0', 'H 1', 'L 0', 'H 1']);
  });

  it('stays as it was between its thresholds', () => {
    const leaking = input('x', { reads, moments: [alone(0.001, 2.5, 5)] });
    expect(reported([leaking], press, release, unplug, press)).toEqual(['L 0', 'L 0', 'L 0', 'H 1', 'H 1']);
  });

  it('wanders where nothing holds it', () => {
    const floating = input('x', { reads, moments: [alone(0.001, null, null)] });
    expect(reported([floating], press, release, unplug)).toEqual(['L 0', 'changes', 'L 0', 'changes']);
  });

  it('jumps between its moments, and only where they differ', () => {
    const loose = input('x', { reads, moments: [alone(0.001, 5, 5), alone(5, 5, 5)] });
    expect(reported([loose], press, release)).toEqual(['changes', 'H 1', 'changes']);
  });

  it('does nothing any more with a dead pin', () => {
    const dead = input('x', { reads, moments: [alone(0.001, 5, 5)], dead: 'H' });
    expect(reported([dead], press, release, unplug)).toEqual(['H 1', 'H 1', 'H 1', 'H 1']);
  });

  it('follows the contact of the line beside it where the two are crossed', () => {
    const crossed: Moment = Array.from({ length: 6 }, () => [0.001, 5, 5, 5, 5, 5]);
    const one = input('x', { reads, moments: [crossed], beside: 'y' });
    const other = input('y', { reads, moments: [crossed], beside: 'x' });
    expect(reported([one, other], press, release)).toEqual(['LL 00', 'LH 01', 'LL 00']);
  });

  it('tells a short and a cut as a trip where it watches a window', () => {
    const window: Reads = { kind: 'band', from: 1, to: 2, rest: 'L', open: 'H' };
    expect([0.5, 1.5, 3, 5].map((volts) => levelAt(window, volts))).toEqual(['H', 'L', 'H', 'H']);
  });
});

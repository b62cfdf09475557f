import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Node } from '../../src/diagnose/circuit/network.ts';
import { type Ask, type Deck, deckOf, type Run } from './netlist.ts';

export type { Ask };

export const hasNgspice = spawnSync('ngspice', ['--version']).status === 0;

/** V by node; twice, with the far end of every shunt at 0 and at 10 V. */
export interface Solved {
  readonly low: ReadonlyMap<Node, number>;
  readonly high: ReadonlyMap<Node, number>;
  /** A in the parts whose current controls an output, at 0 V. */
  readonly amps: ReadonlyMap<string, number>;
}

/** Many networks in one run of ngspice; where they find no operating point together, in two runs, and so on down to one. */
export function solvedByNgspice(asks: readonly Ask[], run: Run): readonly Solved[] {
  try {
    return solvedTogether(asks, run);
  } catch (cause) {
    if (asks.length === 1 && run === 'solve') return solvedTogether(asks, 'coarse');
    if (asks.length === 1) throw cause;
    const half = Math.ceil(asks.length / 2);
    return [...solvedByNgspice(asks.slice(0, half), run), ...solvedByNgspice(asks.slice(half), run)];
  }
}

/** Throws with ngspice's own words where it finds no operating point. */
function solvedTogether(asks: readonly Ask[], run: Run): readonly Solved[] {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-ngspice-'));
  try {
    const raw = join(folder, 'raw');
    const deck = deckOf(asks, raw, run);
    const file = join(folder, 'deck.cir');
    writeFileSync(file, deck.text);
    const ran = spawnSync('ngspice', ['-b', file], { encoding: 'utf8', maxBuffer: 1 << 28 });
    const said = `${ran.stdout}${ran.stderr}`;
    if (/singular|failed|no convergence|aborted/i.test(said))
      throw new Error(`ngspice: ${said.slice(-2000)}`);
    const [low, high] = [0, 1].map((at) => valuesIn(readFileSync(`${raw}.${at}`, 'utf8')));
    if (!low || !high) throw new Error('ngspice wrote nothing.');
    return asks.map((_, at) => ({
      low: nodesOf(low, deck, at),
      high: nodesOf(high, deck, at),
      amps: new Map(
        [...deck.senses]
          .filter(([, { network }]) => network === at)
          .map(([source, { part }]) => [part, low.get(`i(${source})`) ?? Number.NaN]),
      ),
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** An ASCII raw file: a table of variables, then one value a line. */
function valuesIn(raw: string): ReadonlyMap<string, number> {
  const [head = '', values = ''] = raw.split('Values:\n');
  const names = (head.split('Variables:\n')[1] ?? '')
    .split('\n')
    .flatMap((line) => (line.trim() === '' ? [] : [line.trim().split(/\s+/)[1] ?? '']));
  const numbers = values
    .split('\n')
    .map((line) => line.trim().split(/\s+/).at(-1) ?? '')
    .filter((text) => text !== '')
    .map(Number);
  return new Map(names.map((name, at) => [name, numbers[at] ?? Number.NaN]));
}

const nodesOf = (
  values: ReadonlyMap<string, number>,
  deck: Deck,
  network: number,
): ReadonlyMap<Node, number> =>
  new Map(
    [...deck.nodes]
      .filter(([, each]) => each.network === network)
      .map(([name, { node }]) => [node, values.get(name) ?? values.get(`v(${name})`) ?? Number.NaN]),
  );

import { readFileSync } from 'node:fs';
import type { Reads } from '../../src/bench/circuit-truth.ts';
import type { Network } from '../../src/diagnose/circuit/network.ts';
import { circuits } from '../../src/diagnose/circuit/registry.ts';
import { type Wiring, wiringOf } from '../../src/diagnose/circuit/wiring.ts';
import { faultsOf } from '../../src/diagnose/fault-finding/registry.ts';
import type { FaultName } from '../../src/model/fault-names.ts';
import type { WiringName } from '../../src/model/wiring-names.ts';
import { type Leaned, leaning } from './leaning.ts';
import { jobOf, type PinVolts, readsOf } from './pin-volts.ts';

/** What ngspice says of one wiring: sound, and with each fault that changes anything at its pin; see `scripts/write-circuit-table.mjs`. */
export interface WiringVolts {
  readonly wiring: WiringName;
  readonly contact: Wiring['contact'];
  readonly reads: Reads;
  readonly sound: Spread;
  readonly faults: Readonly<Partial<Record<FaultName, Spread>>>;
}

/** Boards whose parts let go late and take hold early, and the other way about; the second left out where it is the same. */
export type Spread = readonly [PinVolts] | readonly [PinVolts, PinVolts];

export const tableFile = new URL('./circuit-table.ndjson', import.meta.url);

type Line = Omit<WiringVolts, 'faults'> | { readonly fault: FaultName; readonly spread: Spread };

/** One line a wiring, then one a fault in it: what changes shows in the history. */
export const tableText = (table: readonly WiringVolts[]): string =>
  table
    .flatMap(({ faults, ...wiring }): readonly Line[] => [
      wiring,
      ...(Object.entries(faults) as [FaultName, Spread][]).map(([fault, spread]) => ({ fault, spread })),
    ])
    .map((line) => `${JSON.stringify(line)}\n`)
    .join('');

export function committedTable(): readonly WiringVolts[] {
  const table: (Omit<WiringVolts, 'faults'> & { faults: Partial<Record<FaultName, Spread>> })[] = [];
  for (const text of readFileSync(tableFile, 'utf8').trimEnd().split('\n')) {
    const line = JSON.parse(text) as Line;
    const last = table.at(-1);
    if ('wiring' in line) table.push({ ...line, faults: {} });
    else if (last) last.faults[line.fault] = line.spread;
  }
  return table;
}

export type Wanted = (wiring: Wiring, fault: FaultName | undefined) => boolean;

/** Solves what is wanted; every network once, however many faults and wirings come to it. */
export function solvedTable(wanted: Wanted = () => true): readonly WiringVolts[] {
  const wirings = circuits.flatMap((circuit) =>
    (['normally open', 'normally closed'] as const).map((contact) => wiringOf(circuit, { contact })),
  );
  const jobs = wirings.flatMap((wiring) =>
    [undefined, ...faultsOf(wiring)]
      .filter((fault) => wanted(wiring, fault?.name))
      .map((fault) => ({ wiring, fault: fault?.name, ...jobOf(wiring, fault) })),
  );
  const all = new Map<string, Network>();
  for (const { networks } of jobs) for (const each of networks) all.set(JSON.stringify(each), each);
  const ends = ([0, 1] as const).map((unit) => {
    const solved = leaning([...all.values()], unit);
    return new Map([...all.keys()].map((key, at) => [key, solved[at]] as const));
  });
  const spreadOf = ({ networks, take }: (typeof jobs)[number]): Spread => {
    const [early, late] = ends.map((end) =>
      take(networks.map((each) => end.get(JSON.stringify(each)) as Leaned)),
    );
    if (!early || !late) throw new Error('Nothing was solved.');
    return JSON.stringify(early) === JSON.stringify(late) ? [early] : [early, late];
  };
  return wirings.flatMap((wiring) => {
    const own = jobs.filter((job) => job.wiring === wiring);
    const first = own.find(({ fault }) => fault === undefined);
    if (!first) return [];
    const sound = spreadOf(first);
    const faults = own.flatMap((job) => {
      const spread = job.fault === undefined ? sound : spreadOf(job);
      return job.fault === undefined || JSON.stringify(spread) === JSON.stringify(sound)
        ? []
        : [[job.fault, spread] as const];
    });
    return [
      {
        wiring: wiring.circuit.name,
        contact: wiring.contact,
        reads: readsOf(wiring).reads,
        sound,
        faults: Object.fromEntries(faults),
      },
    ];
  });
}

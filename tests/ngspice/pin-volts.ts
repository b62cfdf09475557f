import type { Moment, Reads } from '../../src/bench/circuit-truth.ts';
import { standings } from '../../src/bench/circuit-truth.ts';
import { ground, type Network, nodesOf, resistor } from '../../src/diagnose/circuit/network.ts';
import { neighbourOf, type Rig, standing } from '../../src/diagnose/circuit/rig.ts';
import { atRest, type State, state } from '../../src/diagnose/circuit/state.ts';
import { nominal } from '../../src/diagnose/circuit/values.ts';
import { nominalWorld, type Wiring } from '../../src/diagnose/circuit/wiring.ts';
import type { Fault } from '../../src/diagnose/fault-finding/fault.ts';
import { rigsWith } from '../../src/diagnose/fault-finding/reading-of.ts';
import type { Leaned } from './leaning.ts';

/** Of one wiring with one fault in it: V at its pin, and at the pin beside where the fault reaches it, for both ends of the unit spread. */
export interface PinVolts {
  readonly own: readonly Moment[];
  readonly beside?: readonly Moment[];
}

/** Every network a pin has to be solved in, and what is made of the answers. */
export interface Job {
  readonly networks: readonly Network[];
  readonly take: (solved: readonly Leaned[]) => PinVolts;
}

/** `unit` is where the couplers and sensors of this board let go and take hold: 0 surely off, 1 surely on. */
export function jobOf(wiring: Wiring, fault: Fault | undefined): Job {
  const rigs = standings.map((each) => rigsFor(wiring, fault, isClosed(each)));
  const moments = Math.max(...rigs.map(({ length }) => length));
  const hasNeighbour = rigs[0]?.[0]?.network.some(({ name }) => name === neighbourOf('filter')) ?? false;
  const columns = hasNeighbour ? standings : standings.slice(0, 1);
  const networks = Array.from({ length: moments }, (_, moment) =>
    standings.flatMap((own, row) => {
      const some = rigs[row] ?? [];
      const rig = some[Math.min(moment, some.length - 1)];
      if (!rig) throw new Error('A fault left nothing of the input.');
      return columns.map((beside) => held(networkOf(rig, wiring, own, beside)));
    }),
  ).flat();
  const take = (solved: readonly Leaned[]): PinVolts => {
    const limits = readsOf(wiring);
    const all = (pin: string) =>
      distinct(
        Array.from({ length: moments }, (_, moment) =>
          standings.map((_each, row) =>
            columns.map((_other, column) => {
              const at = (moment * standings.length + row) * columns.length + column;
              return voltsOf(solved[at], pin, limits);
            }),
          ),
        ),
      );
    return { own: all('pin'), ...(hasNeighbour && { beside: all(neighbourOf('pin')).map(transposed) }) };
  };
  return { networks, take };
}

const isClosed = (name: string): boolean => name.endsWith('closed');

function rigsFor(wiring: Wiring, fault: Fault | undefined, closed: boolean): readonly Rig[] {
  const pressed = closed === (wiring.contact === 'normally open');
  const at = pressed ? state({ actuation: 'pressed by hand' }) : atRest;
  return rigsWith(wiring, at, fault ? [fault] : [], nominalWorld(wiring));
}

type Plug = State['plug'];
const plugOf = (name: string): Plug => (name.split(',')[0] ?? 'in') as Plug;
const cut = { in: undefined, 'out at controller': 'plug', 'out at switch': 'clamp' } as const;

/** The contact goes as the bench says, whatever the fault would make of it: levers, dogs and blades are the bench's own. */
function networkOf(rig: Rig, wiring: Wiring, own: string, beside: string): Network {
  const conducting = isClosed(own);
  const all = { rest: conducting, tapped: conducting, 'let go': conducting } as const;
  const conducts = { ...all, 'pressed by hand': conducting, 'pressed by machine': conducting };
  const neighbourConducts = { rest: isClosed(beside), pressed: isClosed(beside) };
  const network = standing({ ...rig, conducts, neighbourConducts }, state({ plug: plugOf(own) }), wiring);
  const gone = ['signal', 'common', 'supply'].map((core) => neighbourOf(`${core} ${cut[plugOf(beside)]}`));
  return network.filter(({ name }) => !gone.includes(name));
}

/** Ohm; a tie that no part of an input notices keeps loose ends where a solver can find them. */
const tieOhms = 1e11;
const held = (network: Network): Network => [
  ...network,
  ...nodesOf(network)
    .filter((node) => node !== ground)
    .map((node) => resistor(`tie ${node}`, node, ground, tieOhms)),
];

/** null where a pin's own leakage, in or out, is enough to carry it from one level to the other. */
function voltsOf(solved: Leaned | undefined, pin: string, reads: Limits): number | null {
  const [low, high] = [solved?.down(pin) ?? Number.NaN, solved?.up(pin) ?? Number.NaN];
  if (!Number.isFinite(low) || !Number.isFinite(high)) throw new Error(`No voltage at ${pin}.`);
  if (low <= reads.low && high >= reads.high) return null;
  return Math.round(500 * (low + high)) / 1000;
}

const transposed = (moment: Moment): Moment =>
  (moment[0] ?? []).map((_, column) => moment.map((row) => row[column] ?? null));

const distinct = (moments: readonly Moment[]): readonly Moment[] => {
  const texts = moments.map((each) => JSON.stringify(each));
  return moments.filter((_, at) => texts.indexOf(texts[at] ?? '') === at);
};

interface Limits {
  readonly low: number;
  readonly high: number;
}

/** Below `low` and above `high` every unit of the family reads alike; of a window, the edges of its outer bands. */
export function readsOf({ template, values, family, contact }: Wiring): Limits & { readonly reads: Reads } {
  const limits = template.limits(nominal(values), family);
  if (limits.kind === 'threshold') {
    const { low, high, lowMeans } = limits;
    return {
      low,
      high,
      reads: { kind: 'threshold', falls: low, rises: high, open: lowMeans === 'open' ? 'L' : 'H' },
    };
  }
  const [shorted, middle, cutFrom] = limits.limits;
  const closed = contact === 'normally closed';
  const [from, to] = closed ? [shorted, middle] : [middle, cutFrom];
  return {
    low: shorted,
    high: cutFrom,
    reads: { kind: 'band', from, to, rest: closed ? 'L' : 'H', open: 'H' },
  };
}

import type { Node } from '../../../../src/diagnose/circuit/network.ts';
import { aboveThreshold } from '../../../ngspice/netlist.ts';
import { type Ask, type Solved, solvedByNgspice } from '../../../ngspice/run.ts';
import type { Answer, Question } from './looks.ts';
import type { Unit } from './machine.ts';

/** Answers in the order of the questions. */
export type Solver = (questions: readonly Question[]) => readonly Answer[];

/** Networks in one run of ngspice. */
const inOneRun = 64;
/** Rounds of "solve, then see which controlled outputs work". */
const mostRounds = 6;

interface Open {
  readonly question: Question;
  readonly ask: Omit<Ask, 'works'>;
  works: ReadonlyMap<string, boolean>;
  solved?: Solved;
}

/** ngspice solves every network; whether a coupler or a sensor conducts follows from its voltages and currents and the unit's own threshold. */
export const byNgspice: Solver = (questions) => {
  const all: Open[] = questions.flatMap((question) =>
    question.networks.map((network) => ({
      question,
      ask: { network, shunted: (node: Node) => question.pins.includes(node) },
      works: new Map(),
    })),
  );
  let open = all;
  for (let round = 0; round < mostRounds && open.length > 0; round++) {
    const unsettled: Open[] = [];
    for (let from = 0; from < open.length; from += inOneRun) {
      const some = open.slice(from, from + inOneRun);
      const asks = some.map(({ ask, works }) => ({
        ...ask,
        works: (name: string) => works.get(name) ?? true,
      }));
      for (const [at, solved] of solvedByNgspice(asks, 'solve').entries()) {
        const each = some[at];
        if (!each) continue;
        each.solved = solved;
        const works = worksBy(each.ask, solved, each.question.machine.unit);
        if ([...works].some(([name, on]) => (each.works.get(name) ?? true) !== on)) unsettled.push(each);
        each.works = works;
      }
    }
    open = unsettled;
  }
  let next = 0;
  return questions.map((question) =>
    question.networks.map(() => {
      const solved = all[next++]?.solved;
      return solved ? numbersOf(solved, question) : [];
    }),
  );
};

function worksBy({ network }: Omit<Ask, 'works'>, { low, amps }: Solved, unit: Unit) {
  const volts = (node: Node) => low.get(node) ?? 0;
  return new Map(
    network.flatMap((part) =>
      part.kind === 'switch' && part.closed && part.when
        ? [
            [
              part.name,
              part.when.every(
                (control) =>
                  aboveThreshold(
                    control,
                    volts,
                    (name) => amps.get(name) ?? 0,
                    part.name.endsWith('output') ? unit.coupler : unit.sensor,
                  ) > 0,
              ),
            ] as const,
          ]
        : [],
    ),
  );
}

/** The far end of a pin's shunt of 1 Gohm moved by 10 V moves the pin by 10 nA times what holds it. */
const probeAmps = 1e-8;

const numbersOf = ({ low, high }: Solved, { volts, pins }: Question): readonly number[] => [
  ...volts.map((node) => low.get(node) ?? 0),
  ...pins.map((node) => Math.max(0, ((high.get(node) ?? 0) - (low.get(node) ?? 0)) / probeAmps)),
];

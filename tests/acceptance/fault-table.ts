import type { CheckName, Verdict } from '../../src/model/verdict.ts';
import { controllersAndStreams } from './faults-in-the-controller.ts';
import { motions } from './faults-in-the-motion.ts';
import { contactsAndWires } from './faults-in-the-wiring.ts';
import type { PlantedFault, Saying } from './told.ts';

export const plantedFaults: readonly PlantedFault[] = [
  ...contactsAndWires,
  ...controllersAndStreams,
  ...motions,
];

/** The checks of the table, in the order a person does them. */
export const checksOfTable = ['rest', 'press', 'open-wire', 'stop'] as const satisfies readonly CheckName[];
export type TableCheck = (typeof checksOfTable)[number];

/** One fault and one check: what must be told, and nothing else. */
export interface Row {
  readonly plant: string;
  readonly check: TableCheck;
  readonly tells: Saying;
}

export const rows: readonly Row[] = plantedFaults.flatMap(({ plant, tells }) =>
  checksOfTable.map((check) => ({ plant, check, tells: tells[check] ?? {} })),
);

/** `subject: status kind kind` of everything a check says that is not plainly proved, sorted; a verdict missing or too many shows too. */
export function saidBy(verdicts: readonly Verdict[], check: TableCheck): readonly string[] {
  const own = verdicts.filter((each) => each.check === check);
  const subjects = own.map(({ subject }) => subject).filter((subject) => subject !== 'stream');
  const unlike = subjectsOf[check].filter((subject) => !subjects.includes(subject));
  const lines = own.map(({ subject, status, findings }) =>
    line(subject, [status, ...findings.map(({ kind }) => kind)]),
  );
  const missing = unlike.map((subject) => `${subject}: no verdict`);
  const twice = lines.filter((_, i) => own.findIndex(({ subject }) => subject === own[i]?.subject) !== i);
  return [...lines.filter((each) => !each.endsWith(': proved')), ...missing, ...twice].sort();
}

export const mustSay = ({ tells }: Row): readonly string[] =>
  Object.entries(tells)
    .map(([subject, told]) => line(subject, told))
    .sort();

const line = (subject: string, [status, ...kinds]: readonly string[]): string =>
  `${subject}: ${[status, ...kinds.toSorted()].join(' ')}`;

const inputs = ['x-home', 'x-far', 'y-home', 'y-far', 'z-home', 'probe', 'stop', 'doors'];
const switches = [...inputs.slice(0, -1), 'doors/flap', 'doors/hatch'];
const subjectsOf: Readonly<Record<TableCheck, readonly string[]>> = {
  rest: inputs,
  press: switches,
  'open-wire': switches,
  stop: ['stop'],
};

/** The rows whose fault told something else than they say. */
export const redRows = (
  table: readonly Row[],
  found: ReadonlyMap<string, readonly Verdict[]>,
): readonly Row[] =>
  table.filter((row) => !same(saidBy(found.get(row.plant) ?? [], row.check), mustSay(row)));

export const same = (a: readonly string[], b: readonly string[]): boolean => a.join('\n') === b.join('\n');

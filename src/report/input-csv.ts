import { type CheckName, checkNames } from '../model/verdict.ts';
import { csvLine } from './csv-line.ts';
import type { MapPage, Proof } from './proof.ts';
import type { InputRow } from './schema/input-row.ts';
import { worstOf } from './worst.ts';

/** The input map as CSV: one row a switch, what is declared, what was found, and every check with its evidence and its time. */
export function inputCsv({ rows, proofs }: MapPage): string {
  const checks = checkNames.filter((check) =>
    proofs.some((some) => some.some((each) => each.check === check)),
  );
  const heads = [
    ...columns.map(([head]) => head),
    'worst',
    'findings',
    'possible causes',
    ...checks.flatMap((check) => [check, `${check} evidence`, `${check} at`]),
  ];
  const lines = rows.map((row, i) => {
    const own = proofs[i] ?? [];
    return csvLine([
      ...columns.map(([, of]) => of(row)),
      worstOf(
        own
          .filter(({ check, status }) => check !== 'rest' || status !== 'proved')
          .map(({ status }) => status),
      ),
      [...new Set(own.flatMap(({ findings }) => findings))].join(' '),
      // The unplugged wire was looked at last, and knows of the presses before it.
      own.findLast(({ possible }) => possible.length > 0)?.possible.join(' '),
      ...checks.flatMap((check) => proofCells(own, check)),
    ]);
  });
  return [csvLine(heads), ...lines].join('');
}

function proofCells(proofs: readonly Proof[], check: CheckName): readonly (string | undefined)[] {
  const found = proofs.find((each) => each.check === check);
  return [found?.status ?? 'not-tested', found?.evidence, found?.at];
}

type Column = readonly [head: string, of: (row: InputRow) => string | number | boolean | undefined];

const columns: readonly Column[] = [
  ['switch', ({ subject }) => subject],
  ['input', ({ input }) => input],
  ['duty', ({ declared }) => declared.duty.join(' ')],
  ['axis', ({ declared }) => declared.axis],
  ['end', ({ declared }) => declared.end],
  ['side', ({ declared }) => declared.side],
  ['place', ({ declared }) => declared.place],
  ['motor', ({ declared }) => declared.motor],
  ['joined', ({ declared }) => declared.joined],
  ['terminal', ({ declared }) => declared.terminal],
  ['connector', ({ declared }) => declared.connector],
  ['circuit', ({ declared }) => declared.circuit],
  ['voltage', ({ declared }) => declared.voltage],
  ['sensor', ({ declared }) => declared.sensor],
  ['contact declared', ({ declared }) => declared.contact],
  ['contact found', ({ found }) => found.contact],
  ['setting declared', ({ declared }) => declared.polarity],
  ['setting found', ({ found }) => found.polarity],
  ['answers on', ({ found }) => found.answersOn],
  ['rest level', ({ found }) => found.restLevel],
  ['rest active', ({ found }) => found.restActive],
  [
    'broken wire noticed',
    ({ found }) => (found.breakNoticed === undefined ? undefined : found.breakNoticed ? 'yes' : 'no'),
  ],
];

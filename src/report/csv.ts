import { inputCsv } from './input-csv.ts';
import { mapPage } from './proof.ts';
import type { ReportRecord } from './record.ts';

/** The record as CSV for a spreadsheet: one row a switch. */
export const csv = ({ machine, inputMap, verdicts, session }: ReportRecord): string =>
  inputCsv(
    mapPage({
      machine: machine.name,
      from: session.started,
      rows: inputMap,
      verdicts,
      started: session.started,
    }),
  );

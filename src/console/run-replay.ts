import { buildRecord } from '../report/build-record.ts';
import { json as recordText } from '../report/json.ts';
import { signalFormats } from '../report/signals/formats.ts';
import { summaryText } from '../report/summary-text.ts';
import type { CaptureSurvey } from '../session/capture-survey.ts';
import { replayBeside } from '../session/replay-beside.ts';
import { writeInPieces } from '../session/session-writer.ts';
import { workOverLittle } from './engine.ts';

export interface ReplayWishes {
  readonly json: boolean;
  /** Where to write what the inputs did: a value change dump, and the edges as CSV. */
  readonly vcd?: string;
  readonly csv?: string;
}

/** Judges a session again and prints what comes out; the exit code is the record's own, never 0 where the files contradict each other. */
export async function replayed(
  folder: string,
  { json, vcd, csv }: ReplayWishes,
  survey: () => Promise<CaptureSurvey>,
): Promise<0 | 1 | 2> {
  workOverLittle();
  const { facts, rulesChanged, parted, signals } = await replayBeside(folder, survey, json);
  // A value change dump and the end of a run on a terminal show nothing of circuits, hash and what a fault may come from.
  const record = buildRecord(facts, { circuits: json });
  if (vcd !== undefined) writeInPieces(vcd, signalFormats.vcd(record, signals).pieces);
  if (csv !== undefined) writeInPieces(csv, signalFormats.edges(record, signals).pieces);
  process.stdout.write(json ? recordText(record) : summaryText(record));
  if (rulesChanged) process.stderr.write('tellwire: judged by other rules than when it was recorded.\n');
  if (parted) process.stderr.write(`tellwire: ${partedWords}\n`);
  const { exit } = record.session;
  return parted && exit === 0 ? 2 : exit;
}

const partedWords =
  'the journal asks something else than the capture leads to: one of the two was changed. What comes after that point is not judged.';

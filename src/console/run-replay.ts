import { buildRecord } from '../report/build-record.ts';
import { formats } from '../report/formats.ts';
import { summaryText } from '../report/summary-text.ts';
import { replay } from '../session/replay.ts';

/** Judges a session again and prints what comes out; the exit code is the record's own, never 0 where the files contradict each other. */
export function replayed(folder: string, json: boolean): 0 | 1 | 2 {
  const { facts, rulesChanged, parted } = replay(folder);
  const record = buildRecord(facts);
  process.stdout.write(json ? formats.json(record).text : summaryText(record));
  if (rulesChanged) process.stderr.write('tellwire: judged by other rules than when it was recorded.\n');
  if (parted) process.stderr.write(`tellwire: ${partedWords}\n`);
  const { exit } = record.session;
  return parted && exit === 0 ? 2 : exit;
}

const partedWords =
  'the journal asks something else than the capture leads to: one of the two was changed. What comes after that point is not judged.';

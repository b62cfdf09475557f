import type { SessionFacts } from '../model/session-facts.ts';
import { buildRecord } from '../report/build-record.ts';
import { type Format, formats } from '../report/formats.ts';
import type { SessionFolder } from './folder.ts';

/** Renders a session's report into its folder; returns the path of the last file written. */
export function writeReport(
  folder: SessionFolder,
  facts: SessionFacts,
  as: readonly Format[] = ['json', 'md', 'html'],
): string {
  const record = buildRecord(facts);
  let last = '';
  for (const format of as) {
    const file = formats[format](record);
    folder.write(file.name, file.text);
    last = folder.file(file.name);
  }
  return last;
}

import type { SessionFacts } from '../model/session-facts.ts';
import { buildRecord } from '../report/build-record.ts';
import { type FormatName, reportFiles } from '../report/formats.ts';
import type { SessionFolder } from './folder.ts';

/** Renders a session's report into its folder; returns the path of the last file written. */
export function writeReport(
  folder: SessionFolder,
  facts: SessionFacts,
  names: readonly FormatName[] = ['json', 'md', 'html'],
): string {
  let last = '';
  for (const file of reportFiles(buildRecord(facts), names)) {
    folder.write(file.name, file.text);
    last = folder.file(file.name);
  }
  return last;
}

import { resolve } from 'node:path';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { buildRecord } from '../report/build-record.ts';
import { type FormatName, formatNames, reportFiles } from '../report/formats.ts';
import { SessionFolder } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { listed } from '../words/figures.ts';
import { namesIn } from './options.ts';
import { showJson, showLines } from './show.ts';

/** Writes the report of a session into its folder once more, in the formats asked for, and names the files. */
export function reported(path: string, asked: readonly string[], json: boolean): void {
  const names = asked.length === 0 ? formatNames : namesIn(asked).map(formatNamed);
  const record = buildRecord(replay(path).facts);
  const folder = new SessionFolder(path);
  const files = reportFiles(record, names).map(({ name, text }) => {
    folder.write(name, text);
    return resolve(folder.file(name));
  });
  if (json) showJson(files);
  else showLines(files);
}

function formatNamed(name: string): FormatName {
  const found = formatNames.find((each) => each === name);
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `The format ${visible(name)} is not in this version.`,
    `There are ${listed(formatNames)}.`,
  );
}

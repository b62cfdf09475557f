import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { buildRecord } from '../report/build-record.ts';
import { formatNames, formats } from '../report/formats.ts';
import { signalFormats } from '../report/signals/formats.ts';
import { packBundle } from '../session/bundle.ts';
import { SessionFolder } from '../session/folder.ts';
import { replay } from '../session/replay.ts';
import { listed } from '../words/figures.ts';
import type { ReportFlags } from './commands/flags.ts';
import { isBundle } from './is-bundle.ts';
import { namesIn } from './options.ts';
import { showJson, showLines } from './show.ts';

/** What a report comes in where no format was named: what a session leaves of itself. */
const usual = ['md', 'html', 'json'] as const;
const known = [...formatNames, 'vcd'] as const;
type Known = (typeof known)[number];

/** Writes the report of a session once more, in the formats asked for, and names the files. */
export function reported(path: string, asked: readonly string[], json: boolean, into: string): void {
  const names = asked.length === 0 ? usual : namesIn(asked).map(formatNamed);
  const { facts, signals } = replay(path);
  const record = buildRecord(facts);
  mkdirSync(into, { recursive: true });
  const folder = new SessionFolder(into);
  const files = names.map((name) => {
    if (name === 'vcd') {
      const file = signalFormats.vcd(record, signals);
      folder.writePieces(file.name, file.pieces);
      return resolve(folder.file(file.name));
    }
    const file = formats[name](record);
    folder.write(file.name, file.text);
    return resolve(folder.file(file.name));
  });
  if (json) showJson(files);
  else showLines(files);
}

/** Into the session itself; what came in one file has its reports in a folder beside it. */
export const reportFolder = (session: string): string =>
  isBundle(session) ? `${session.replace(/(\.tar)?\.gz$|\.tgz$/, '')}-report` : session;

/** Packs a session into one file and names it. */
export function bundled(session: string, { bundle, redact, format = [], json }: ReportFlags): void {
  if (isBundle(session) || format.length > 0)
    throw new ToolError(
      'wrong-usage',
      format.length > 0 ? 'A bundle has no format.' : `${visible(session)} is no folder.`,
      'tellwire report <session folder> --bundle',
    );
  const file = resolve(typeof bundle === 'string' ? bundle : `${resolve(session)}.tar.gz`);
  packBundle(session, file, redact === true);
  if (json === true) showJson([file]);
  else showLines([file]);
}

function formatNamed(name: string): Known {
  const found = known.find((each) => each === name);
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `The format ${visible(name)} is not in this version.`,
    `There are ${listed(known)}.`,
  );
}

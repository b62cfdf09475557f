import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import { replay } from '../../src/session/replay.ts';

/** Prints the report of a session folder, judged anew, as JSON: file name -> text. */
const [, , folder = ''] = process.argv;
const record = buildRecord(replay(folder).facts);
const files = (['json', 'md', 'html'] as const).map((name) => formats[name](record));
process.stdout.write(JSON.stringify(Object.fromEntries(files.map(({ name, text }) => [name, text]))));

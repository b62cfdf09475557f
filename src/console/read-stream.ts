import type { StreamDescription, StreamRequest } from '../model/stream-description.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { readDescription } from '../transport/stream/description/read.ts';
import { FileWrong } from './file-wrong.ts';
import { textOfFile } from './read-machine.ts';

/** The description in a file's text. Throws FileWrong, which names every problem at once. */
export function descriptionIn(text: string, path: string): StreamDescription {
  const read = readDescription(text);
  if (read.description) return read.description;
  throw new FileWrong('stream description', read.problems, path, `tellwire check --stream ${visible(path)}`);
}

/** The description in a file that a person named. Throws ToolErrors `file-missing`, `file-wrong`. */
export const descriptionAt = (path: string): StreamDescription => descriptionIn(textOfFile(path), path);

/** "tell\n" and 200 ms, as options. Escapes are \n, \r, \t and \xNN. */
export function requestOption(text: string | undefined, every: number): StreamRequest | undefined {
  if (text === undefined) return undefined;
  const plain: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', '\\': '\\' };
  const send = text.replace(/\\(?:x([0-9a-f]{2})|([nrt\\]))/gi, (_, hex?: string, letter?: string) =>
    hex === undefined ? (plain[letter ?? ''] ?? '') : String.fromCharCode(Number.parseInt(hex, 16)),
  );
  if (/^[\x00-\xff]{1,32}$/.test(send)) return { send, every };
  throw new ToolError(
    'wrong-usage',
    `--request ${visible(text)}: not understood.`,
    'Write 1 to 32 bytes, such as "tell\\n".',
  );
}

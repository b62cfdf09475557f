import { createHash } from 'node:crypto';
import { appendFileSync, mkdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import type { StreamRequest } from '../model/stream-description.ts';
import { ToolError } from '../model/tool-error.ts';
import { escapeBytes } from '../model/visible.ts';
import { requestWords } from '../words/request-words.ts';
import { isTerminal } from './choose-face.ts';
import { endWithoutTerminal } from './lost-terminal.ts';
import type { FaceName } from './options.ts';

/**
 * Nothing is written to a controller that the person has not seen and let pass: on a terminal once for these very bytes and their
 * pace, anywhere else by their hash. Throws ToolError `wrong-usage` where nobody let them pass.
 */
export async function letPass(
  request: StreamRequest | undefined,
  allowed: string | undefined,
  face: FaceName,
): Promise<void> {
  if (!request) return;
  const canAsk = face !== 'json' && isTerminal();
  const hash = hashOf(request);
  if (hash === allowed || confirmedBefore().includes(hash)) return;
  if (canAsk && (await confirmed(request))) {
    remember(`${hash} ${escapeBytes(request.send)} every ${request.every} ms`);
    return;
  }
  throw new ToolError(
    'wrong-usage',
    requestWords.wouldBeWritten(request),
    canAsk ? requestWords.notConfirmed : requestWords.byHash(hash),
  );
}

const hashOf = ({ send, every }: StreamRequest): string =>
  createHash('sha256')
    .update(JSON.stringify([send, every]))
    .digest('hex')
    .slice(0, 16);

async function confirmed(request: StreamRequest): Promise<boolean> {
  endWithoutTerminal();
  const { stdin: input, stdout: output } = process;
  const prompt = createInterface({ input, output });
  try {
    for (const line of [requestWords.wouldBeWritten(request), requestWords.caution])
      output.write(`${line}\n`);
    const gone = new Promise<string>((resolve) => prompt.once('close', () => resolve('')));
    return (await Promise.race([prompt.question(`${requestWords.question} `), gone])).trim() === 'yes';
  } finally {
    prompt.close();
  }
}

/** Where a person's own programs keep what they should remember (XDG Base Directory Specification, state). */
function memory(): string {
  const { XDG_STATE_HOME, LOCALAPPDATA } = process.env;
  const windows = process.platform === 'win32' ? LOCALAPPDATA : undefined;
  return join(XDG_STATE_HOME || windows || join(homedir(), '.local', 'state'), 'tellwire', 'let-pass');
}

function confirmedBefore(): readonly string[] {
  try {
    return readFileSync(memory(), 'utf8')
      .split('\n')
      .map((line) => line.split(' ')[0] ?? '');
  } catch {
    return [];
  }
}

/** Where it cannot be kept, it is asked again the next time. */
function remember(line: string): void {
  try {
    mkdirSync(dirname(memory()), { recursive: true });
    appendFileSync(memory(), `${line}\n`);
  } catch {}
}

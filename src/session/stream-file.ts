import type { StreamDescription } from '../model/stream-description.ts';
import { ToolError } from '../model/tool-error.ts';
import { readDescription } from '../transport/stream/description/read.ts';
import type { SessionFolder } from './folder.ts';

/** The description a session's stream is read by; undefined: the native sentences. Throws ToolError `session-damaged`. */
export const streamOf = (folder: SessionFolder): StreamDescription | undefined =>
  streamIn(folder.streamText());

export function streamIn(text: string | undefined): StreamDescription | undefined {
  if (text === undefined) return undefined;
  const read = readDescription(text);
  if (read.description) return read.description;
  throw new ToolError(
    'session-damaged',
    "The session's copy of the stream description no longer reads.",
    'Restore stream.yaml from a copy of the folder.',
  );
}

import type { StreamRequest } from '../model/stream-description.ts';
import { escapeBytes } from '../model/visible.ts';

/** What is said before the request of a stream description is written to a port for the first time. */
export const requestWords = {
  wouldBeWritten: ({ send, every }: StreamRequest) =>
    `These bytes would be written to the port every ${every} ms while the machine stands still: ${escapeBytes(send)}`,
  caution:
    'Caution: they come from the description or from you, not from the tool, which does not know what your controller makes of them. Whatever starts motion must not stand in them.',
  question:
    'Do you know them to ask for the status and to do nothing else? Write yes in full to let them pass:',
  notConfirmed: 'They were not let pass. Look up in the notes of your controller what asks for its status.',
  byHash: (hash: string) =>
    `Only if you know that your controller takes them as a question for its status and as nothing else, add --allow-request ${hash}.`,
} as const;

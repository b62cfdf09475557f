import type { HandsOptions } from '../../src/bench/simulated-hands.ts';
import type { CauseFacts, SearchOrder } from '../../src/model/cause-facts.ts';
import type { FaceEvent } from '../../src/session/operator.ts';
import {
  remove,
  temporaryFolder,
  type VirtualOptions,
  type VirtualOutcome,
  virtualSession,
} from '../session/virtual-session.ts';

export interface Searching extends Omit<VirtualOptions, 'folder'> {
  readonly subject?: string;
  readonly order?: Partial<SearchOrder>;
  readonly hands?: HandsOptions;
  readonly folder?: string;
}

export const orderOf = (subject: string, more: Partial<SearchOrder> = {}): SearchOrder => ({
  subject,
  history: 'fresh',
  stopProved: false,
  earlier: [],
  ...more,
});

/** A whole search on the bench in virtual time, with hands that do what they are asked. */
export async function searched({
  subject = 'x-home',
  order,
  folder,
  session,
  ...options
}: Searching): Promise<VirtualOutcome> {
  const own = folder ?? temporaryFolder();
  try {
    return await virtualSession({
      ...options,
      folder: own,
      session: {
        checks: ['press', 'open-wire'],
        only: [subject],
        search: orderOf(subject, order),
        ...session,
      },
    });
  } finally {
    if (folder === undefined) remove(own);
  }
}

export function causeIn({ facts }: Pick<VirtualOutcome, 'facts'>): CauseFacts {
  const found = facts.verdicts.find(({ check }) => check === 'troubleshoot')?.facts.cause;
  if (!found) throw new Error('the search came to nothing at all');
  return found;
}

export const causeEvents = (events: readonly FaceEvent[]) => events.filter((event) => event.kind === 'cause');

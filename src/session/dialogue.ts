import type { Answer } from '../model/ask.ts';
import { subjectOf } from '../model/ask.ts';
import type { AskRecord } from '../model/session-facts.ts';
import { ms } from '../model/units.ts';
import type { JournalRecord } from './journal.ts';

/** The talk as the journal holds it: every ask with the very words shown and how it ended. */
export function dialogueOf(records: readonly JournalRecord[]): readonly AskRecord[] {
  const talk = new Map<number, AskRecord>();
  for (const record of records) {
    if (record.kind === 'ask') {
      const { id, again, ask, text, cautions, at } = record;
      const open = { to: undefined, by: undefined, answer: undefined };
      talk.set(id, {
        id,
        again,
        check: ask.check,
        subject: subjectOf(ask),
        text,
        cautions,
        from: ms(at),
        ...open,
      });
    }
    const asked = record.kind === 'ended' ? talk.get(record.id) : undefined;
    if (!asked || record.kind !== 'ended') continue;
    talk.set(record.id, {
      ...asked,
      to: ms(record.at),
      by: record.by,
      answer: record.answer as Answer | undefined,
    });
  }
  return [...talk.values()];
}

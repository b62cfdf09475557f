import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Event, Person } from './person.ts';

/**
 * A person at a face that talks to no program works by the journal, which is on disk before anything is shown. `say` gives her answer to the
 * face. Ends when `until` says so.
 */
export async function workByJournal(
  folder: string,
  person: Person,
  say: (answer: { readonly id: number; readonly answer: string }) => void,
  until: () => boolean,
): Promise<void> {
  const journal = join(folder, 'journal.ndjson');
  // A key has no number: she looks at the page once more before she presses it, as a person does.
  const isOpen = (id: number) => !readFileSync(journal, 'utf8').includes(`{"kind":"ended","id":${id},`);
  person.attend((given) => {
    const answer = given as Parameters<typeof say>[0];
    if (isOpen(answer.id)) say(answer);
  });
  let read = 0;
  while (!until()) {
    await pause(30);
    if (!existsSync(journal)) continue;
    const lines = readFileSync(journal, 'utf8').split('\n').slice(0, -1);
    for (const line of lines.slice(read)) person.take(eventIn(line));
    read = lines.length;
  }
  person.forget();
}

/** A line of the journal as the operator protocol would tell it. */
function eventIn(line: string): Event {
  const { kind, id, ask = {} } = JSON.parse(line);
  const [input, name] = String(ask.subject ?? '').split('/');
  return { ...ask, kind, id, ...(input && { input }), ...(name && { switch: name }) };
}

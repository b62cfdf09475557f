import { createInterface } from 'node:readline';
import type { StreamFacts } from '../../model/session-facts.ts';
import type { StreamRequest } from '../../model/stream-description.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { Verdict } from '../../model/verdict.ts';
import { visible } from '../../model/visible.ts';
import { saysOf } from '../../report/verdict-says.ts';
import type { Heard } from '../../session/operator.ts';
import { statusWord } from '../../words/verdict-words.ts';
import { streamStatement, watchWords } from '../../words/watch-words.ts';

/** What a watch shows, whichever way it is shown. */
export interface WatchFace {
  heard(change: Heard): void;
  mark(number: number, at: Millis, said: string): void;
  note(topic: 'lost' | 'back' | 'asked', text: string): void;
  /** `written`: what was written to the port, if anything. */
  finished(facts: StreamFacts, verdicts: readonly Verdict[], written: string | undefined): void;
  close(): void;
}

export interface WatchKeys {
  mark(said: string): void;
  /** Nothing moves: what is written to the port may be written again. */
  still(): void;
  end(): void;
}

export interface Watched {
  readonly port: string;
  /** Seconds. */
  readonly soak: number | undefined;
  readonly request: StreamRequest | undefined;
}

/** Every typed line is a mark, but for the word that says that nothing moves. */
function typedMarks(request: StreamRequest | undefined, keys: WatchKeys) {
  const typed = createInterface({ input: process.stdin });
  typed.on('line', (text) =>
    request && text.trim().toLowerCase() === 'still' ? keys.still() : keys.mark(text.trim()),
  );
  return typed;
}

/** One sentence a line; a typed line is a mark. The end of the input ends nothing: an unattended watch has none. */
export function linesWatch({ port, soak, request }: Watched, keys: WatchKeys): WatchFace {
  const put = (text: string): void => {
    process.stdout.write(`${visible(text)}\n`);
  };
  put(watchWords.begins(port, request));
  put(soak === undefined ? watchWords.lines : watchWords.soakBegins(ms(soak * 1000)));
  if (request) put(watchWords.stillLines);
  const typed = typedMarks(request, keys);
  return {
    heard: ({ arrived, input, level, active }) =>
      put(`${(arrived / 1000).toFixed(3)} s  ${input}  ${stateWord(active)}, ${levelWord(level)}`),
    mark: (number, at, said) => put(watchWords.mark(number, at, said)),
    note: (_topic, text) => put(text),
    finished: tellEnd,
    close: () => typed.close(),
  };
}

/** What came out of a watch, as lines. */
export function tellEnd(facts: StreamFacts, verdicts: readonly Verdict[], written: string | undefined): void {
  const lines = [
    streamStatement(facts),
    ...(written === undefined ? [] : [written]),
    ...verdicts.map((verdict) => `${statusWord(verdict)}  ${verdict.subject}: ${saysOf(verdict).join(' ')}`),
  ];
  process.stdout.write(lines.map((line) => `${visible(line)}\n`).join(''));
}

const stateWord = (active: Heard['active']): string =>
  active === '?' ? 'active value not reported' : active === '1' ? 'ACTIVE' : 'inactive';
const levelWord = (level: Heard['level']): string =>
  level === '?' ? 'level not reported' : `level ${level === 'H' ? 'high' : 'low'}`;

/** One JSON object a line; a typed line is a mark. */
export function jsonWatch({ request }: Watched, keys: WatchKeys): WatchFace {
  const put = (what: object): void => {
    process.stdout.write(`${JSON.stringify(what)}\n`);
  };
  const typed = typedMarks(request, keys);
  return {
    heard: put,
    mark: (number, at, said) => put({ kind: 'mark', number, at, said }),
    note: (topic, text) => put({ kind: 'notice', topic: `stream-${topic}`, text }),
    finished(stream, verdicts, written) {
      for (const { check, subject, status, evidence, findings, missing, facts } of verdicts)
        put({ kind: 'verdict', check, subject, status, evidence, findings, missing, facts });
      put({ kind: 'finished', stream, ...(written !== undefined && { written }) });
    },
    close: () => typed.close(),
  };
}

import type { Machine } from '../model/machine.ts';
import type { OutItem, SessionFacts } from '../model/session-facts.ts';
import { seconds } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { dialogueOf } from './dialogue.ts';
import type { SessionHeader } from './folder.ts';
import type { JournalRecord } from './journal.ts';
import type { StreamStatistics } from './stream-statistics.ts';
import { wiringsOf } from './wirings.ts';

export interface FactsParts {
  readonly header: SessionHeader;
  readonly machine: Machine;
  readonly captureHash: string;
  readonly verdicts: readonly Verdict[];
  readonly records: readonly JournalRecord[];
  readonly register: readonly OutItem[];
  readonly statistics: StreamStatistics;
  readonly lines: number;
  readonly sent: SessionFacts['sent'];
  readonly stopped: boolean;
}

/** A session as facts alone, from which any report can be made without it. */
export function factsOf(parts: FactsParts): SessionFacts {
  const { header, machine, captureHash, verdicts, records, register, statistics, lines, sent, stopped } =
    parts;
  return {
    tool: { version: header.tool, rules: header.rules },
    started: header.started,
    port: header.port,
    machine,
    machineHash: header.machineHash,
    captureHash,
    asked: {
      checks: header.checks,
      presses: header.presses,
      rest: seconds(header.restSeconds),
      only: header.only,
    },
    verdicts,
    dialogue: dialogueOf(records),
    register,
    stream: statistics.facts(lines),
    // Computed where somebody shows it: it takes longer than all the judging.
    get wirings() {
      return wiringsOf(machine, verdicts);
    },
    sent: withOwn(sent, records),
    stopped,
  };
}

/** The journal says which of the lines that were written the person had typed: it speaks of each right after it was written. */
function withOwn(sent: SessionFacts['sent'], records: readonly JournalRecord[]): SessionFacts['sent'] {
  const own = records.map(
    (record) =>
      record.kind === 'own-line' && sent.findLast(({ at, text }) => at <= record.at && text === record.text),
  );
  return sent.map((line) => (own.includes(line) ? { ...line, own: true } : line));
}

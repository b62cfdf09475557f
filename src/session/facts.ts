import type { Machine } from '../model/machine.ts';
import type { OutItem, SessionFacts } from '../model/session-facts.ts';
import { seconds } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import type { CaptureSurvey } from './capture-survey.ts';
import type { CircuitsKnown } from './circuits-known.ts';
import { dialogueOf } from './dialogue.ts';
import type { SessionHeader } from './folder.ts';
import type { JournalRecord } from './journal.ts';

export interface FactsParts {
  readonly header: SessionHeader;
  readonly machine: Machine;
  /** Left out: the facts tell of no circuits. */
  readonly known: CircuitsKnown | undefined;
  readonly survey: CaptureSurvey;
  readonly captureHash: string;
  readonly verdicts: readonly Verdict[];
  readonly records: readonly JournalRecord[];
  readonly register: readonly OutItem[];
  readonly stopped: boolean;
}

/** A session as facts alone, from which any report can be made without it. */
export function factsOf(parts: FactsParts): SessionFacts {
  const { header, machine, known, survey, captureHash, verdicts, records, register, stopped } = parts;
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
    stream: survey.stream,
    // Computed where somebody shows it: it takes longer than all the judging.
    get wirings() {
      return known?.wiringsOf(machine, verdicts) ?? [];
    },
    sent: withOwn(survey.sent, records),
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

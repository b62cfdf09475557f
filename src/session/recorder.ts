import type { Reading } from '../model/reading.ts';
import type { Millis } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { type CaptureEntry, encodeEntry } from '../transport/capture.ts';
import { encodeRecord, type JournalRecord, verdictRecord } from './journal.ts';
import type { SessionWriter } from './session-writer.ts';
import type { StreamReader } from './stream-reader.ts';

/** A journal record before it is stamped with the moment and the capture's length. */
export type Unstamped<Kind extends JournalRecord['kind']> = Omit<
  Extract<JournalRecord, { kind: Kind }>,
  'at' | 'lines'
>;

/** Writes down everything heard, sent, asked and found, in the order that loses nothing. */
export class Recorder {
  private readonly writer: SessionWriter;
  private readonly reader: StreamReader;
  private lines: number;
  readonly records: JournalRecord[];

  constructor(
    writer: SessionWriter,
    reader: StreamReader,
    past: { lines: number; records: readonly JournalRecord[] },
  ) {
    this.writer = writer;
    this.reader = reader;
    this.lines = past.lines;
    this.records = [...past.records];
  }

  /** Into the capture first, then to readings: what is judged has been kept. */
  entry(entry: CaptureEntry): readonly Reading[] {
    this.writer.captureLine(encodeEntry(entry));
    this.lines++;
    return this.reader.entry(entry);
  }

  note<Kind extends JournalRecord['kind']>(record: Unstamped<Kind>, at: Millis): void {
    this.keep({ ...record, at, lines: this.lines } as unknown as JournalRecord, false);
  }

  /** On the disk itself before the call returns. */
  verdicts(verdicts: readonly Verdict[], at: Millis): void {
    for (const [nth, verdict] of verdicts.entries())
      this.keep(verdictRecord(verdict, { at, lines: this.lines }), nth === verdicts.length - 1);
  }

  close(): void {
    this.writer.close();
  }

  get entries(): number {
    return this.lines;
  }

  private keep(record: JournalRecord, lasting: boolean): void {
    this.records.push(record);
    this.writer.journalLine(encodeRecord(record), lasting);
  }
}

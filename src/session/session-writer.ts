import { closeSync, fsyncSync, ftruncateSync, openSync, writeSync } from 'node:fs';

/** How many capture lines may wait in memory; a journal line never overtakes them. */
const captureBatch = 64;

/** Appends to capture and journal in the one order that loses nothing: capture first, then the journal line that speaks of it. */
export class SessionWriter {
  private readonly capture: number;
  private readonly journal: number;
  private waiting: string[] = [];

  constructor(capture: string, captureLength: number, journal: string, journalLength: number) {
    this.capture = openSync(capture, 'r+');
    this.journal = openSync(journal, 'r+');
    ftruncateSync(this.capture, captureLength);
    ftruncateSync(this.journal, journalLength);
    this.captureAt = captureLength;
    this.journalAt = journalLength;
  }

  private captureAt: number;
  private journalAt: number;

  captureLine(line: string): void {
    this.waiting.push(line);
    if (this.waiting.length >= captureBatch) this.flushCapture();
  }

  /** `lasting`: on the disk itself before the call returns, not only handed to the system. */
  journalLine(line: string, lasting: boolean): void {
    this.flushCapture();
    this.journalAt += append(this.journal, line, this.journalAt);
    if (!lasting) return;
    fsyncSync(this.capture);
    fsyncSync(this.journal);
  }

  close(): void {
    this.flushCapture();
    closeSync(this.capture);
    closeSync(this.journal);
  }

  private flushCapture(): void {
    if (this.waiting.length === 0) return;
    this.captureAt += append(this.capture, this.waiting.join(''), this.captureAt);
    this.waiting = [];
  }
}

function append(file: number, text: string, at: number): number {
  const bytes = Buffer.from(text, 'utf8');
  let written = 0;
  while (written < bytes.length)
    written += writeSync(file, bytes, written, bytes.length - written, at + written);
  return bytes.length;
}

/** Writes a new file piece by piece, a few hundred kilobytes at a time. */
export function writeInPieces(path: string, pieces: Iterable<string>): void {
  const file = openSync(path, 'w');
  try {
    let at = 0;
    let waiting: string[] = [];
    let length = 0;
    for (const piece of pieces) {
      waiting.push(piece);
      length += piece.length;
      if (length < pieceBatch) continue;
      at += append(file, waiting.join(''), at);
      waiting = [];
      length = 0;
    }
    append(file, waiting.join(''), at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

const pieceBatch = 256 * 1024;

import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { ToolError } from '../model/tool-error.ts';
import { checkNames } from '../model/verdict.ts';

/** What stays the same through every resume of a session; session.json. */
export const headerSchema = z.object({
  format: z.literal(1),
  tool: z.string(),
  rules: z.int(),
  started: z.string(),
  port: z.string(),
  machineHash: z.string(),
  checks: z.array(z.enum(checkNames)),
  presses: z.int().positive(),
  restSeconds: z.number().positive(),
  only: z.array(z.string()).optional(),
});
export type SessionHeader = z.infer<typeof headerSchema>;

export const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

const names = {
  header: 'session.json',
  machine: 'machine.yaml',
  capture: 'capture.log',
  journal: 'journal.ndjson',
} as const;

/** The files of one session. Writing goes through `SessionWriter`; everything here reads or creates. */
export class SessionFolder {
  readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  /** Refuses a folder that holds anything: evidence is never written over. */
  static create(path: string, header: SessionHeader, machineText: string): SessionFolder {
    if (existsSync(path) && readdirSync(path).length > 0) {
      throw new ToolError(
        'folder-not-empty',
        `The folder ${path} is not empty.`,
        'Name another folder with --out, or go on with the session in it with --resume.',
      );
    }
    mkdirSync(path, { recursive: true });
    const folder = new SessionFolder(path);
    folder.write(names.machine, machineText);
    for (const name of [names.capture, names.journal]) writeFileSync(folder.file(name), '', { flag: 'a' });
    folder.write(names.header, `${JSON.stringify(header, null, 2)}\n`);
    return folder;
  }

  /** Whether a session was begun here. */
  get exists(): boolean {
    return existsSync(this.file(names.header));
  }

  header(): SessionHeader {
    const text = this.read(names.header);
    try {
      return headerSchema.parse(JSON.parse(text));
    } catch (cause) {
      const found = `${this.file(names.header)} is not a session description this version can read.`;
      throw new ToolError(
        'session-damaged',
        found,
        'Restore the file from a copy of the folder, or begin a new session.',
        cause,
      );
    }
  }

  machineText(): string {
    return this.read(names.machine);
  }

  journalText(): string {
    return this.read(names.journal);
  }

  captureBytes(): Buffer {
    return this.bytes(names.capture);
  }

  /** Written beside and renamed, so that no crash leaves half a file. */
  write(name: string, text: string): void {
    const part = this.file(`${name}.part`);
    writeFileSync(part, text, { flush: true });
    renameSync(part, this.file(name));
  }

  /** Opens capture and journal for going on, torn tails cut off at the given lengths in bytes. */
  writer(captureLength: number, journalLength: number): SessionWriter {
    return new SessionWriter(
      this.file(names.capture),
      captureLength,
      this.file(names.journal),
      journalLength,
    );
  }

  file(name: string): string {
    return join(this.path, name);
  }

  private read(name: string): string {
    return this.bytes(name).toString('utf8');
  }

  private bytes(name: string): Buffer {
    try {
      return readFileSync(this.file(name));
    } catch (cause) {
      throw new ToolError(
        'file-missing',
        `There is no ${name} in ${this.path}.`,
        'Name the folder of a session.',
        cause,
      );
    }
  }
}

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

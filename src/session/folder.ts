import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { ToolError } from '../model/tool-error.ts';
import { everyCheck } from '../model/verdict.ts';
import { CaptureFile } from './capture-file.ts';
import { searchOrderSchema } from './search-order.ts';
import { SessionWriter, writeInPieces } from './session-writer.ts';

/** What stays the same through every resume of a session; session.json. */
export const headerSchema = z.object({
  format: z.literal(1),
  tool: z.string(),
  rules: z.int(),
  started: z.string(),
  port: z.string(),
  machineHash: z.string(),
  /** Left out: the native status sentences. */
  streamHash: z.string().optional(),
  checks: z.array(z.enum(everyCheck)),
  presses: z.int().positive(),
  restSeconds: z.number().positive(),
  only: z.array(z.string()).optional(),
  /** Left out: as many homings as is usual. */
  cycles: z.int().positive().optional(),
  /** Left out: no program was given. */
  programHash: z.string().optional(),
  /** Where the cause of one input's trouble is sought. */
  search: searchOrderSchema.optional(),
});
export type SessionHeader = z.infer<typeof headerSchema>;

export const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

const names = {
  header: 'session.json',
  machine: 'machine.yaml',
  stream: 'stream.yaml',
  program: 'program.txt',
  capture: 'capture.log',
  journal: 'journal.ndjson',
} as const;

/** The files a session consists of; reports are made from them. */
export const sessionFiles: readonly string[] = Object.values(names);

/** The files of one session. Writing goes through `SessionWriter`; everything here reads or creates. */
export class SessionFolder {
  readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  /** A new session's files; refuses a folder that holds anything. */
  static create(
    path: string,
    header: SessionHeader,
    machineText: string,
    streamText?: string,
    programText?: string,
  ): SessionFolder {
    const folder = new SessionFolder(path);
    folder.refuseIfFilled();
    mkdirSync(path, { recursive: true });
    folder.write(names.machine, machineText);
    if (streamText !== undefined) folder.write(names.stream, streamText);
    if (programText !== undefined) folder.write(names.program, programText);
    for (const name of [names.capture, names.journal]) writeFileSync(folder.file(name), '', { flag: 'a' });
    folder.write(names.header, `${JSON.stringify(header, null, 2)}\n`);
    return folder;
  }

  /** Evidence is never written over. */
  refuseIfFilled(): void {
    if (!existsSync(this.path) || readdirSync(this.path).length === 0) return;
    throw new ToolError(
      'folder-not-empty',
      `The folder ${this.path} is not empty.`,
      'Name another folder with --out, or go on with the session in it with --resume.',
    );
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

  /** The stream description; undefined where the session reads the native sentences. */
  streamText(): string | undefined {
    return this.header().streamHash === undefined ? undefined : this.read(names.stream);
  }

  /** The RS-274 program that is to fit the machine; undefined where none was given. */
  programText(): string | undefined {
    return this.header().programHash === undefined ? undefined : this.read(names.program);
  }

  journalText(): string {
    return this.read(names.journal);
  }

  /** The capture, to be read once from its beginning. Throws ToolError `file-missing`. */
  capture(how?: ConstructorParameters<typeof CaptureFile>[1]): CaptureFile {
    const path = this.file(names.capture);
    if (!existsSync(path)) throw this.missing(names.capture);
    return new CaptureFile(path, how);
  }

  /** Piece by piece, beside and renamed as with `write`. */
  writePieces(name: string, pieces: Iterable<string>): void {
    const part = this.file(`${name}.part`);
    writeInPieces(part, pieces);
    renameSync(part, this.file(name));
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
      throw this.missing(name, cause);
    }
  }

  private missing(name: string, cause?: unknown): ToolError {
    const found = `There is no ${name} in ${this.path}.`;
    return new ToolError('file-missing', found, 'Name the folder of a session.', cause);
  }
}

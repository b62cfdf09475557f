import { type Document, isMap, isScalar, parseDocument, visit } from 'yaml';
import { type CaptureLine, encodeEntry } from '../transport/capture.ts';
import { leftOut } from '../words/left-out.ts';
import { type SessionFolder, sha256 } from './folder.ts';
import { encodeRecord, type JournalRecord, readJournal } from './journal.ts';

/** A file of a session: its name and its text, piece by piece. */
export type NamedPieces = readonly [name: string, pieces: Iterable<string>];

/**
 * A session without the names a person gave: the machine's, the places', the port's, the stream's, the comments of the machine
 * file, of the stream description and of a program, and paths in lines that were heard. Names of inputs, terminals, connectors and fields stay:
 * without them nobody could help. It judges as the whole one does.
 */
export function redacted(folder: SessionFolder): readonly NamedPieces[] {
  const { text, names } = redactedMachine(folder.machineText());
  const streamText = folder.streamText();
  const stream = streamText === undefined ? undefined : redactedStream(streamText);
  const programText = folder.programText();
  const program = programText === undefined ? undefined : redactedProgram(programText);
  const header = {
    ...folder.header(),
    port: leftOut,
    machineHash: sha256(text),
    ...(stream !== undefined && { streamHash: sha256(stream) }),
    ...(program !== undefined && { programHash: sha256(program) }),
  };
  return [
    ['session.json', [`${JSON.stringify(header, null, 2)}\n`]],
    ['machine.yaml', [text]],
    ...(stream === undefined ? [] : [['stream.yaml', [stream]] as const]),
    ...(program === undefined ? [] : [['program.txt', [program]] as const]),
    ['capture.log', redactedLines(folder.capture().lines())],
    ['journal.ndjson', readJournal(folder.journalText()).records.map((each) => redactedRecord(each, names))],
  ];
}

const privateKeys = ['machine', 'stand', 'place'];

/** The machine file without its comments and a person's own words, and these words. */
export function redactedMachine(machineText: string): { text: string; names: readonly string[] } {
  const document = parseDocument(machineText);
  const names: string[] = [];
  visit(document, {
    Map(_key, map) {
      for (const { key, value } of map.items) {
        if (!isScalar(key) || !isScalar(value) || !privateKeys.includes(String(key.value))) continue;
        names.push(String(value.value));
      }
      map.items = map.items.filter(
        ({ key }) => !isScalar(key) || key.value === 'machine' || !privateKeys.includes(String(key.value)),
      );
    },
  });
  withoutComments(document);
  if (isMap(document.contents)) document.set('machine', leftOut);
  return { text: document.toString(), names: names.sort((a, b) => b.length - a.length) };
}

/** A stream description without its name and comments. */
function redactedStream(streamText: string): string {
  const document = parseDocument(streamText);
  withoutComments(document);
  if (isMap(document.contents)) document.set('stream', leftOut);
  return document.toString({ lineWidth: 0 });
}

/** A program of as many lines, read the same, in which comments and what stands behind a percent sign say nothing (RS-274, NISTIR 6556, 3.3). */
export function redactedProgram(programText: string): string {
  return programText
    .split('\n')
    .map((line) => {
      if (/^\s*%/.test(line)) return '%';
      const [words = '', ...comment] = line.replace(/\([^()]*\)/g, '()').split(';');
      // Never closed: nothing of such a line is read.
      if (words.replaceAll('()', '').includes('(')) return '(';
      return withoutPaths(comment.length > 0 ? `${words};` : words);
    })
    .join('\n');
}

function withoutComments(document: Document): void {
  const bare = (node: { comment?: string | null; commentBefore?: string | null }) => {
    node.comment = null;
    node.commentBefore = null;
  };
  visit(document, { Node: (_key, node) => bare(node) });
  bare(document);
}

function redactedRecord(record: JournalRecord, names: readonly string[]): string {
  if (record.kind === 'own-line') return encodeRecord({ ...record, text: withoutPaths(record.text) });
  if (record.kind !== 'ask') return encodeRecord(record);
  const without = (said: string) => names.reduce((text, name) => text.replaceAll(name, leftOut), said);
  return encodeRecord({ ...record, text: without(record.text), cautions: record.cautions.map(without) });
}

function* redactedLines(lines: Iterable<CaptureLine>): Generator<string> {
  for (const line of lines) {
    // A damaged line stays one line, so that the journal's counts still fit.
    if (line.kind === 'damaged') yield 'damaged\n';
    else if (line.kind === 'rx' || line.kind === 'tx')
      yield encodeEntry({ ...line, text: withoutPaths(line.text) });
    else yield encodeEntry({ ...line, text: leftOut });
  }
}

/** Two or more folder names after one another, with or without a drive: nothing a status report holds. */
const path = /(?:[A-Za-z]:)?(?:[\\/][A-Za-z][A-Za-z0-9 ._-]+){2,}/g;

const withoutPaths = (text: string): string => text.replace(path, (found) => 'x'.repeat(found.length));

import { beforeAll, describe, expect, it } from 'vitest';
import { readJournal } from '../../src/session/journal.ts';
import { captureReader } from '../transport/capture-reader.ts';
import { resumedFrom, type Scripted, scriptedSession } from './scripted.ts';
import { mustBeJudged } from './two-switches.ts';

/** Offsets behind every line end. */
const lineEnds = (bytes: Buffer): readonly number[] =>
  [...bytes.keys()].filter((at) => bytes[at] === 0x0a).map((at) => at + 1);

/**
 * Resuming looks at the files through two readers only, and then cuts both files to what those called sound. So every length is
 * read, and each different reading is resumed, cut in turn behind its last line and with the next line torn off at its last byte:
 * where CI=true, both. EVERY_BYTE=1 resumes at every single length, which takes half an hour, EVERY_BYTE=11 at every eleventh.
 */
const everyByte = Number(process.env.EVERY_BYTE ?? 0);
const both = process.env.CI === 'true';

describe('a session whose files were cut', () => {
  let whole: Scripted;
  let captureEnds: readonly number[];
  let journalEnds: readonly number[];
  /** How many capture lines each journal line speaks of. */
  let speaksOf: readonly number[];

  beforeAll(async () => {
    whole = await scriptedSession();
    captureEnds = lineEnds(whole.capture);
    journalEnds = lineEnds(whole.journal);
    const lines = whole.journal.toString().trimEnd().split('\n');
    speaksOf = lines.map((line) => (JSON.parse(line) as { readonly lines: number }).lines);
  });

  const linesIn = (ends: readonly number[], length: number) => ends.filter((end) => end <= length).length;
  const endBefore = (ends: readonly number[], length: number) => ends[linesIn(ends, length) - 1] ?? 0;
  const lengths = (bytes: Buffer) => Array.from({ length: bytes.length + 1 }, (_, length) => length);
  /** When the first capture line that is lost was heard. */
  const heardAt = (line: number): number => {
    const from = captureEnds[line - 1] ?? 0;
    return line >= captureEnds.length
      ? whole.end
      : Number.parseFloat(whole.capture.toString('latin1', from, from + 20));
  };
  const tornBehind = (ends: readonly number[], lines: number, end: number): readonly number[] => {
    const from = ends[lines - 1] ?? 0;
    const to = (ends[lines] ?? end + 1) - 1;
    if (everyByte > 0)
      return Array.from({ length: to - from + 1 }, (_, i) => from + i).filter((at) => at % everyByte === 0);
    if (both && to > from) return [from, to];
    return [lines % 2 === 0 ? from : to];
  };

  it('is whole where nothing is cut', () => {
    expect(whole.judged).toEqual(mustBeJudged);
  });

  it('is read up to the last whole line, at every length of either file', () => {
    for (const length of lengths(whole.capture)) {
      const reader = captureReader();
      const count = reader.push(whole.capture.subarray(0, length)).length;
      expect([count, reader.soundBytes]).toEqual([
        linesIn(captureEnds, length),
        endBefore(captureEnds, length),
      ]);
    }
    for (const length of lengths(whole.journal)) {
      const { records, ends } = readJournal(whole.journal.toString('utf8', 0, length));
      expect([records.length, ends.at(-1) ?? 0]).toEqual([
        linesIn(journalEnds, length),
        endBefore(journalEnds, length),
      ]);
    }
  }, 60_000);

  it('comes to the same verdicts where the capture was cut', async () => {
    let resumed = 0;
    for (let kept = 0; kept <= captureEnds.length; kept++)
      for (const capture of tornBehind(captureEnds, kept, whole.capture.length)) {
        const cut = { capture, journal: whole.journal.length, moment: heardAt(kept) };
        expect(await resumedFrom(whole, cut), `capture cut to ${capture} bytes`).toEqual(mustBeJudged);
        resumed++;
      }
    console.log(`The capture read at ${whole.capture.length + 1} lengths, gone on with from ${resumed}.`);
  }, 2_000_000);

  it('comes to the same verdicts where the journal was cut, with the machine as it was at the end', async () => {
    let resumed = 0;
    for (let kept = 0; kept <= journalEnds.length; kept++)
      for (const journal of tornBehind(journalEnds, kept, whole.journal.length)) {
        const cut = { capture: whole.capture.length, journal, moment: whole.end };
        expect(await resumedFrom(whole, cut), `journal cut to ${journal} bytes`).toEqual(mustBeJudged);
        resumed++;
      }
    console.log(`The journal read at ${whole.journal.length + 1} lengths, gone on with from ${resumed}.`);
  }, 2_000_000);

  it('comes to the same verdicts where both end at the moment the power went', async () => {
    for (const [kept, lines] of speaksOf.entries()) {
      const cut = {
        capture: captureEnds[lines - 1] ?? 0,
        journal: journalEnds[kept] ?? 0,
        moment: heardAt(lines),
      };
      expect(await resumedFrom(whole, cut), `behind journal line ${kept + 1}`).toEqual(mustBeJudged);
    }
  }, 120_000);
});

import type { Reading, StatusReading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import { lineSplitter } from '../../../src/transport/line-splitter.ts';
import { nativeDecoder } from '../../../src/transport/stream/native-decoder.ts';
import { framed } from './by-hand.ts';

/** A stream in which one report, of the usual 72 bytes, is damaged: four sound ones before it, four behind, 20 ms apart. */
const body = (i: number) =>
  `PTWRS,${40_209 + i},${1_284_487 + 20 * i},moving,HLHHLH,010010,${(123.45 - i).toFixed(3)},-8.025,-45.000`;
export const victim = 4;
const lines = [
  'PTWRD,1,mm,XYZ,x-home y-home z-home probe door stop',
  ...Array.from({ length: 9 }, (_, i) => body(i)),
].map((each) => Buffer.from(`${framed(each)}\r\n`, 'latin1'));
const victimLine = victim + 1;
export const sentBytes = lines[victimLine] ?? Buffer.alloc(0);

export function decoded(damaged: Uint8Array = sentBytes): readonly Reading[] {
  const splitter = lineSplitter();
  const decoder = nativeDecoder();
  return lines
    .flatMap((line, i) => splitter.push(i === victimLine ? damaged : line, ms(20 * i)))
    .flatMap((line) => decoder.decode(line));
}
export const sound = decoded().filter((reading) => reading.kind === 'status');
const sentReading = sound[victim];

/** Whether a line of these bytes still looks whole to the sum alone, and is not the one sent. Worked out apart from the codec. */
export function pastSum(damaged: Uint8Array): boolean {
  return Buffer.from(damaged)
    .toString('latin1')
    .split('\n')
    .some((line) => {
      const text = line.endsWith('\r') ? line.slice(0, -1) : line;
      const sentence = text.slice(Math.max(0, text.lastIndexOf('$')));
      const star = sentence.indexOf('*');
      return star > 0 && framed(sentence.slice(1, star)) === sentence && !sentBytes.includes(`${sentence}\r`);
    });
}

export const rules = ['form', 'address', 'count', 'number', 'sequence', 'clock', 'nothing'] as const;
export type Rule = (typeof rules)[number];
export const fields = ['activity', 'levels', 'active', 'positions', 'lost', 'at'] as const;

export interface Outcome {
  /** The first rule behind the sum that refused the report. */
  readonly caughtBy: Rule;
  /** Which parts of the report that was believed are not as sent. */
  readonly changed: readonly (typeof fields)[number][];
  readonly gap: boolean;
  /** Whether all reports behind the damaged one were believed, as sent. */
  readonly goesOn: boolean;
}

const byWhy: Partial<Record<string, Rule>> = {
  'not-a-sentence': 'form',
  'too-long': 'form',
  'wrong-sum': 'form',
  'unknown-sentence': 'address',
  'wrong-field-count': 'count',
  'wrong-number': 'number',
};

/** What became of damage that the sum let through. */
export function outcomeOf(damaged: Uint8Array): Outcome {
  const readings = decoded(damaged);
  const refused = readings.find((reading) => reading.kind === 'unreadable');
  const statuses = readings.filter((reading) => reading.kind === 'status');
  const believed = statuses.find(({ arrived }) => arrived === 20 * victimLine);
  const behind = statuses.filter(({ arrived }) => arrived > 20 * victimLine);
  return {
    caughtBy: refused === undefined ? 'nothing' : (byWhy[refused.why] ?? stepBroken(damaged)),
    changed: believed === undefined ? [] : fields.filter((field) => differs(believed, field)),
    gap: readings.some(({ kind }) => kind === 'gap'),
    goesOn: behind.length === 4 && behind.every((reading, i) => sameReport(reading, sound[victim + 1 + i])),
  };
}

/** Of a report that is out of step: whether its sequence is as sent, so that its clock must be what gave it away. */
function stepBroken(damaged: Uint8Array): Rule {
  const text = Buffer.from(damaged).toString('latin1');
  return text.includes(`,${40_209 + victim},`) ? 'clock' : 'sequence';
}

const differs = (reading: StatusReading, field: (typeof fields)[number]) =>
  JSON.stringify(reading[field]) !== JSON.stringify(sentReading?.[field]);

/** Equal in all but the count of reports lost before it. */
export const sameReport = (one: Reading, other: Reading | undefined) =>
  JSON.stringify({ ...one, lost: 0 }) === JSON.stringify({ ...other, lost: 0 });

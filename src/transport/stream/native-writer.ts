import { sumDigits } from './checksum.ts';
import type { StatusSentence } from './sentence.ts';

/** Longest sentence in all, `$` to LF. */
const longest = 240;

/** The tool's own sentence: please declare and report once. */
export const writeRequest = (): string => sentence('PTWRQ');

/**
 * The declaration, followed by as many sentences of more names as its length asks for. Names are lower-case letters, digits and
 * hyphens, 24 at most.
 */
export function writeDeclaration(declared: {
  readonly units: 'mm' | 'inch';
  readonly axes: readonly string[];
  readonly inputs: readonly string[];
}): readonly string[] {
  const sentences: string[] = [];
  let head = `PTWRD,1,${declared.units},${declared.axes.join('')},`;
  let names: string[] = [];
  for (const [index, name] of declared.inputs.entries()) {
    if (framedLength(head + [...names, name].join(' ')) > longest) {
      sentences.push(sentence(head + names.join(' ')));
      head = `PTWRN,${index},`;
      names = [];
    }
    names.push(name);
  }
  sentences.push(sentence(head + names.join(' ')));
  return sentences;
}

/**
 * One snapshot. `seq` and `ms` may run on without bound: they are wrapped here, at 2^16 and 2^32. Empty arrays and `?` activity
 * are sent as empty fields; positions are in the declared units, undefined where not reported.
 */
export function writeStatus(
  status: Omit<StatusSentence, 'kind'> & {
    /** Digits after the point; 3 where left out. */
    readonly decimals?: number;
  },
): string {
  const decimals = status.decimals ?? 3;
  const activity = status.activity === '?' ? '' : status.activity;
  let body = `PTWRS,${wrapped(status.seq, 16)},${wrapped(status.ms, 32)},${activity}`;
  body += `,${status.levels.join('')},${status.active.join('')}`;
  for (const at of status.positions) body += at === undefined ? ',' : `,${at.toFixed(decimals)}`;
  return sentence(body);
}

/** One edge of the input with this index; `us` on the clock of which `ms` is the thousandth part, wrapped here at 2^32. */
export const writeEdge = (seq: number, us: number, input: number, level: 'H' | 'L'): string =>
  sentence(['PTWRE', wrapped(seq, 16), wrapped(us, 32), input, level].join(','));

/** Input voltages in mV, one an input; undefined where not measured. */
export const writeVolts = (ms: number, millivolts: readonly (number | undefined)[]): string =>
  sentence(
    ['PTWRA', wrapped(ms, 32), ...millivolts.map((mV) => (mV === undefined ? '' : Math.round(mV)))].join(','),
  );

/** Frames a body. Throws RangeError where the sentence would be longer than the 240 bytes a reader takes. */
export function sentence(body: string): string {
  if (framedLength(body) > longest) throw new RangeError(`Sentence of more than ${longest} bytes: ${body}`);
  return `$${body}*${sumDigits(body)}\r\n`;
}

const framedLength = (body: string) => body.length + '$*hh\r\n'.length;

/** A counter of `bits` bits at its value after any number of turns. */
const wrapped = (value: number, bits: 16 | 32) => {
  const turn = turns[bits];
  return ((Math.floor(value) % turn) + turn) % turn;
};
const turns = { 16: 2 ** 16, 32: 2 ** 32 } as const;

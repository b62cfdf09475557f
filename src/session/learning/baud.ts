import type { Source, Timekeeper } from '../../model/source.ts';
import { ToolError } from '../../model/tool-error.ts';
import { ms } from '../../model/units.ts';

/**
 * Usual rates, the most usual first; but 230400 before 250000, at which the figures it sends are still letters: the error is eight
 * per cent, and only the upper bits of a character are read in the place of their neighbours.
 */
export const usualRates = [115200, 230400, 250000, 57600, 38400, 19200, 9600, 460800, 921600] as const;
/** Long enough to hear somebody who reports once a second. */
const listensFor = ms(1600);
const looksEvery = ms(100);
/** What came so soon may have been received at the rate before. */
const oldFor = 150;
/** Many boards start anew when their port is first opened, and say nothing until they have. */
const rounds = 2;
/** Fewer bytes say nothing; at a wrong rate hardly half of them are printable. */
const fewest = 40;
const enough = 400;
const most = 65_536;
const printable = 0.95;

/** The share of bytes that are printable ASCII, tab or an end of line. */
export function printableShare(bytes: Uint8Array): number {
  let count = 0;
  for (const byte of bytes)
    if ((byte >= 0x20 && byte < 0x7f) || byte === 9 || byte === 10 || byte === 13) count++;
  return bytes.length === 0 ? 0 : count / bytes.length;
}

/** Whether bytes are lines of text, as they are only at the rate at which they were sent. */
export const isReadable = (bytes: Uint8Array): boolean =>
  bytes.length >= fewest && bytes.includes(0x0a) && printableShare(bytes) >= printable;

/** Finds the rate of a serial port by listening at one after the other; writes nothing. Rejects with a ToolError where none fits. */
export async function baudByListening(open: (baud: number) => Source, time: Timekeeper): Promise<number> {
  for (let round = 1; round <= rounds; round++)
    for (const rate of usualRates) if (isReadable(await heardAt(open(rate), time))) return rate;
  throw new ToolError(
    'nothing-heard',
    'At none of the usual rates was readable text heard.',
    'Name the rate with --baud. A controller that reports only when asked needs --baud and --request.',
  );
}

/** What comes until it is enough to judge by, or until the time is over. */
async function heardAt(source: Source, time: Timekeeper): Promise<Uint8Array> {
  const heard: number[] = [];
  let openedAt = time.now();
  await source.open((event) => {
    if (event.kind === 'opened') openedAt = event.arrived;
    if (event.kind !== 'bytes' || event.arrived - openedAt < oldFor || heard.length >= most) return;
    for (const byte of event.bytes) heard.push(byte);
  });
  const until = time.now() + listensFor;
  while (time.now() < until && heard.length < enough)
    await new Promise<void>((over) => time.after(looksEvery, over));
  await source.close();
  return Uint8Array.from(heard);
}

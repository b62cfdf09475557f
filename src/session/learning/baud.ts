import type { Source, Timekeeper } from '../../model/source.ts';
import { ToolError } from '../../model/tool-error.ts';
import { ms } from '../../model/units.ts';

/** Usual rates, the most usual first. */
export const usualRates = [115200, 250000, 57600, 38400, 19200, 9600, 230400, 460800, 921600] as const;
const listensFor = ms(1500);
/** Fewer bytes say nothing; at a wrong rate hardly half of them are printable. */
const fewest = 40;
const printable = 0.95;

/** The share of bytes that are printable ASCII, tab or an end of line. */
export function printableShare(bytes: Uint8Array): number {
  let count = 0;
  for (const byte of bytes)
    if ((byte >= 0x20 && byte < 0x7f) || byte === 9 || byte === 10 || byte === 13) count++;
  return bytes.length === 0 ? 0 : count / bytes.length;
}

/** Finds the rate of a serial port by listening at one after the other; writes nothing. Rejects with a ToolError where none fits. */
export async function baudByListening(open: (baud: number) => Source, time: Timekeeper): Promise<number> {
  for (const rate of usualRates) {
    const heard: number[] = [];
    const source = open(rate);
    await source.open((event) => {
      if (event.kind === 'bytes' && heard.length < 65_536) for (const byte of event.bytes) heard.push(byte);
    });
    await new Promise<void>((over) => time.after(listensFor, over));
    await source.close();
    if (heard.length >= fewest && heard.includes(10) && printableShare(Uint8Array.from(heard)) >= printable)
      return rate;
  }
  throw new ToolError(
    'nothing-heard',
    'At none of the usual rates was readable text heard.',
    'Name the rate with --baud. A controller that reports only when asked needs --baud and --request.',
  );
}

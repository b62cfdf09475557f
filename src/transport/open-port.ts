import type { Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import type { KeptSource } from './kept-open.ts';
import { serialSource } from './serial.ts';
import { tcpAddress, tcpSource } from './tcp.ts';

const allowed =
  'Write a device path (as `tellwire ports` lists them), tcp://host:port, or bench for the simulated machine.';

/** The source that a `--port` text names: `tcp://host:port` or a device path. Throws ToolError `wrong-usage` for any other text. */
export function openPort(
  text: string,
  { baud, time }: { readonly baud: number; readonly time: Timekeeper },
): KeptSource {
  const shown = visible(text);
  if (text.trim() === '' || shown !== text)
    throw new ToolError('wrong-usage', `"${shown}" names no port.`, allowed);
  if (tcpAddress(text) !== undefined) return tcpSource(text, { time });
  // `tcp:`, `telnet://`: an address of another kind, or one that is cut short; never a device.
  if (/^[a-z][a-z0-9+.-]+:/i.test(text) && !/^com\d+:?$/i.test(text))
    throw new ToolError('wrong-usage', `"${shown}" is no port address.`, allowed);
  if (!Number.isInteger(baud) || baud < 50 || baud > 20_000_000)
    throw new ToolError(
      'wrong-usage',
      `${baud} is no baud rate.`,
      'Write whole bits a second, such as --baud 115200.',
    );
  return serialSource(text, { baud, time });
}

import type { Source } from '../../src/model/source.ts';

/** Every position of every status sentence with its sign turned, and the sum that then belongs to it; nothing else is touched. */
export function flipped(line: string): string {
  if (!line.startsWith('$PTWRS,')) return line;
  const [body = '', ending = ''] = [
    line.slice(1, line.lastIndexOf('*')),
    line.slice(line.lastIndexOf('*') + 3),
  ];
  const fields = body.split(',');
  // PTWRS, count, clock, activity, levels, active; positions follow.
  const turned = fields.map((field, i) =>
    i < 6 || Number(field) === 0 || field === '' ? field : negated(field),
  );
  const said = turned.join(',');
  return `$${said}*${sumOf(said)}${ending}`;
}

const negated = (field: string): string => (field.startsWith('-') ? field.slice(1) : `-${field}`);

/** XOR of the bytes between `$` and `*`, two upper-case hex digits (NMEA 0183 framing). */
function sumOf(body: string): string {
  const sum = Buffer.from(body, 'latin1').reduce((all, byte) => all ^ byte, 0);
  return sum.toString(16).toUpperCase().padStart(2, '0');
}

/** The same port, whose every sentence comes flipped. The bench sends whole sentences. */
export const flippedPort = (port: Source): Source => ({
  ...port,
  open: (listener) =>
    port.open((event) =>
      listener(
        event.kind === 'bytes'
          ? { ...event, bytes: Buffer.from(flipped(Buffer.from(event.bytes).toString('latin1')), 'latin1') }
          : event,
      ),
    ),
});

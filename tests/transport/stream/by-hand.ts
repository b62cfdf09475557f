import type { Line } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';

/** A sentence framed by a sum of the test's own, so that no expected value comes from the code it tests. */
export function framed(body: string): string {
  let sum = 0;
  for (const byte of Buffer.from(body, 'latin1')) sum ^= byte;
  return `$${body}*${'0123456789ABCDEF'[sum >> 4]}${'0123456789ABCDEF'[sum & 15]}`;
}

export const lineOf = (body: string, arrived = 0): Line => ({
  arrived: ms(arrived),
  text: framed(body),
  cut: 0,
});

export const declared = 'PTWRD,1,mm,XYZ,x-home y-home z-home probe';

/** A still status of four inputs at rest. */
export const statusBody = (seq: number, clock: number, levels = 'LLLL'): string =>
  `PTWRS,${seq},${clock},still,${levels},0000,1.000,2.000,-3.500`;

import { expect, it } from 'vitest';
import { ms } from '../../../src/model/units.ts';
import { describedDecoder } from '../../../src/transport/stream/description/described-decoder.ts';
import { readDescription } from '../../../src/transport/stream/description/read.ts';

it('of two values under one name the first is read, as it is the first that learning watches', () => {
  const { description } = readDescription(`stream: invented
inputs:
  left: { field: door, shows: active, active: ["1"], inactive: ["0"], lines: { values: { door: "1" } } }
`);
  if (!description) throw new Error('it reads');
  const readings = describedDecoder(description).decode({ arrived: ms(0), text: 'door:1 door:0', cut: 0 });
  expect(readings.find(({ kind }) => kind === 'status')).toMatchObject({ active: ['1'] });
});

import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import { nativeDecoder } from '../../../src/transport/stream/native-decoder.ts';
import { declared, lineOf, statusBody } from './by-hand.ts';

type Said = readonly [body: string, arrived: number];

/** What a decoder makes of sentences, after the port was opened at 0. */
function heard(...said: readonly Said[]): readonly Reading[] {
  const decoder = nativeDecoder();
  return [
    ...decoder.gap(ms(0), 'opened'),
    ...said.flatMap(([body, arrived]) => decoder.decode(lineOf(body, arrived))),
  ];
}

const kinds = (readings: readonly Reading[]) =>
  readings.map((reading) => ('why' in reading ? `${reading.kind} ${reading.why}` : reading.kind));
const inputsOf = (readings: readonly Reading[]) =>
  readings.flatMap((reading) => (reading.kind === 'declared' ? [reading.inputs] : []));

describe('a declaration', () => {
  it('gives names to the levels that follow', () => {
    const readings = heard([declared, 1], [statusBody(0, 10, 'HL?L'), 2]);
    expect(readings).toEqual([
      { kind: 'gap', arrived: 0, segment: 1, why: 'opened' },
      {
        kind: 'declared',
        arrived: 2,
        segment: 1,
        units: 'mm',
        axes: ['X', 'Y', 'Z'],
        inputs: ['x-home', 'y-home', 'z-home', 'probe'],
      },
      {
        kind: 'status',
        arrived: 2,
        at: 10,
        segment: 1,
        lost: 0,
        inputs: ['x-home', 'y-home', 'z-home', 'probe'],
        axes: ['X', 'Y', 'Z'],
        activity: 'still',
        levels: ['H', 'L', '?', 'L'],
        active: ['0', '0', '0', '0'],
        positions: [1, 2, -3.5],
      },
    ]);
  });

  it('repeated changes nothing', () => {
    const readings = heard([declared, 1], [statusBody(0, 10), 2], [declared, 3], [statusBody(1, 20), 4]);
    expect(kinds(readings)).toEqual(['gap opened', 'declared', 'status', 'status']);
  });

  it('unlike the last begins a new segment', () => {
    const other = 'PTWRD,1,mm,XYZ,x-home y-home z-home door';
    const readings = heard([declared, 1], [statusBody(0, 10), 2], [other, 3], [statusBody(1, 20), 4]);
    expect(kinds(readings)).toEqual([
      'gap opened',
      'declared',
      'status',
      'gap declaration-changed',
      'declared',
      'status',
    ]);
    expect(readings.map((reading) => 'segment' in reading && reading.segment)).toEqual([1, 1, 1, 2, 2, 2]);
    expect(readings.at(-1)).toMatchObject({ at: 20, lost: 0 });
  });

  it('is waited for by statuses, up to six seconds', () => {
    const early: Said[] = [
      [statusBody(0, 10), 100],
      [statusBody(1, 20), 1000],
    ];
    expect(kinds(heard(...early, [declared, 6100]))).toEqual(['gap opened', 'declared', 'status', 'status']);
    expect(kinds(heard(...early, [declared, 6101]))).toEqual([
      'gap opened',
      'unreadable before-declaration',
      'declared',
      'status',
    ]);
  });

  it('is waited for in the order of arrival, the unreadable among the rest', () => {
    const readings = heard([statusBody(0, 10), 5], ['PTWRX', 6], [statusBody(1, 20), 7], [declared, 8]);
    expect(kinds(readings)).toEqual([
      'gap opened',
      'declared',
      'status',
      'unreadable unknown-sentence',
      'status',
    ]);
    expect(readings.map(({ arrived }) => arrived)).toEqual([0, 5, 5, 6, 7]);
  });

  it('that never comes leaves every status counted, none judged', () => {
    const decoder = nativeDecoder();
    const out = Array.from({ length: 100 }, (_, i) =>
      decoder.decode(lineOf(statusBody(i, i * 100), i * 100)),
    );
    const last = decoder.gap(ms(10_000), 'lost-port');
    const all = [...out.flat(), ...last];
    expect(all.filter((reading) => reading.kind === 'unreadable')).toHaveLength(100);
    expect(kinds(all).at(-1)).toBe('gap lost-port');
  });

  it('is asked for again after each opening', () => {
    const decoder = nativeDecoder();
    decoder.decode(lineOf(declared, 1));
    decoder.decode(lineOf(statusBody(0, 10), 2));
    expect([decoder.heard, decoder.declared]).toEqual([true, true]);
    decoder.gap(ms(3), 'lost-port');
    decoder.gap(ms(4), 'opened');
    expect([decoder.heard, decoder.declared]).toEqual([false, false]);
    expect(decoder.decode(lineOf(statusBody(1, 20), 5))).toEqual([]);
    expect([decoder.heard, decoder.declared]).toEqual([true, false]);
  });
});

describe('a declaration in several sentences', () => {
  const head = 'PTWRD,1,mm,,a b';
  const more = 'PTWRN,2,c d';
  const four = (seq: number) => `PTWRS,${seq},${seq * 10},still,LLLL,0000`;

  it('is whole when a status reports as many inputs as it names', () => {
    const readings = heard([head, 1], [four(0), 2], [four(1), 3], [more, 4], [four(2), 5]);
    expect(kinds(readings)).toEqual(['gap opened', 'declared', 'status', 'status', 'status']);
    expect(inputsOf(readings)).toEqual([['a', 'b', 'c', 'd']]);
  });

  it('repeated changes nothing, in whole or in part', () => {
    const readings = heard(
      ...([
        [head, 1],
        [more, 2],
        [four(0), 3],
        [head, 4],
        [four(1), 5],
        [more, 6],
        [four(2), 7],
      ] as const),
    );
    expect(kinds(readings)).toEqual(['gap opened', 'declared', 'status', 'status', 'status']);
  });

  it('with fewer names than before is another one', () => {
    const two = (seq: number) => `PTWRS,${seq},${seq * 10},still,LL,00`;
    const readings = heard([head, 1], [two(0), 2], ['PTWRD,1,mm,,a', 3], ['PTWRS,1,10,still,L,0', 4]);
    expect(kinds(readings).slice(3)).toEqual(['gap declaration-changed', 'declared', 'status']);
    expect(inputsOf(readings)).toEqual([['a', 'b'], ['a']]);
  });

  it('with other names at its end is another one', () => {
    const readings = heard([head, 1], [more, 2], [four(0), 3], [head, 4], ['PTWRN,2,c e', 5], [four(1), 6]);
    expect(kinds(readings).slice(3)).toEqual(['gap declaration-changed', 'declared', 'status']);
    expect(inputsOf(readings)[1]).toEqual(['a', 'b', 'c', 'e']);
  });

  it('whose second sentence was lost waits for it to come again', () => {
    const third = 'PTWRN,4,e';
    const five = (seq: number) => `PTWRS,${seq},${seq * 10},still,LLLLL,00000`;
    const readings = heard(
      ...([
        [head, 1],
        [third, 2],
        [five(0), 3],
        [head, 5001],
        [more, 5002],
        [third, 5003],
        [five(1), 5004],
      ] as const),
    );
    expect(kinds(readings)).toEqual(['gap opened', 'declared', 'status', 'status']);
    expect(inputsOf(readings)).toEqual([['a', 'b', 'c', 'd', 'e']]);
  });

  it('that names an input twice is no declaration', () => {
    expect(kinds(heard([head, 1], ['PTWRN,2,a', 2]))).toEqual(['gap opened', 'unreadable wrong-number']);
  });
});

describe('a count that does not agree with the declaration', () => {
  const start: Said[] = [
    [declared, 1],
    [statusBody(0, 10), 2],
  ];
  const then = (body: string) => kinds(heard(...start, [body, 3])).slice(3);

  it.each([
    ['PTWRS,1,20,still,LLL,000,1,2,3', 'unreadable wrong-field-count'],
    ['PTWRS,1,20,still,LLLLL,00000,1,2,3', 'unreadable wrong-field-count'],
    ['PTWRS,1,20,still,LLLL,0000,1,2', 'unreadable wrong-field-count'],
    ['PTWRS,1,20,still,LLLL,0000,1,2,3,4', 'unreadable wrong-field-count'],
    ['PTWRE,1,20000,4,H', 'unreadable wrong-number'],
    ['PTWRA,20,1,2,3', 'unreadable wrong-field-count'],
    ['PTWRS,1,20,still,LLLL,0000', 'status'],
    ['PTWRS,1,20,still,,,1,2,3', 'status'],
    ['PTWRS,1,20,still,LLLL,,,,', 'status'],
    ['PTWRE,1,20000,3,H', 'edge'],
    ['PTWRA,20,1,2,,4', 'volts'],
    ['PTWRA,20', 'volts'],
  ])('%s is %s', (body, expected) => expect(then(body)).toEqual([expected]));

  it('says ? for what is not reported, never a level of its own', () => {
    const [reading] = heard(...start, ['PTWRS,1,20,,,', 3]).slice(3);
    expect(reading).toMatchObject({
      activity: '?',
      levels: ['?', '?', '?', '?'],
      active: ['?', '?', '?', '?'],
      positions: [undefined, undefined, undefined],
    });
  });

  it('of fewer inputs than a damaged declaration names is read by the sound one before it', () => {
    const readings = heard(...start, [`${declared} door`, 3], [statusBody(1, 20), 4]);
    expect(kinds(readings).slice(3)).toEqual(['status']);
  });
});

it('measures positions in millimetres where the controller counts inches', () => {
  const readings = heard(['PTWRD,1,inch,X,a', 1], ['PTWRS,0,0,still,L,0,-2', 2]);
  expect(readings.at(-1)).toMatchObject({ positions: [-50.8] });
});

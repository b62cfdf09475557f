import { describe, expect, it } from 'vitest';
import { readSentence } from '../../../src/transport/stream/native-sentences.ts';
import { declared, framed, statusBody } from './by-hand.ts';

const read = (body: string) => readSentence(framed(body));
const why = (body: string) => {
  const found = read(body);
  return found.kind === 'unreadable' ? found.why : found.kind;
};

describe('a native sentence', () => {
  it('declares units, axes and input names in order', () => {
    expect(read(declared)).toEqual({
      kind: 'declaration',
      units: 'mm',
      axes: ['X', 'Y', 'Z'],
      names: ['x-home', 'y-home', 'z-home', 'probe'],
    });
  });

  it('reports activity, levels, active inputs and positions', () => {
    expect(read('PTWRS,65535,4294967295,homing,HL?,10?,,-12.5,0')).toEqual({
      kind: 'status',
      seq: 65_535,
      ms: 4_294_967_295,
      activity: 'homing',
      levels: ['H', 'L', '?'],
      active: ['1', '0', '?'],
      positions: [undefined, -12.5, 0],
    });
  });

  it('takes an empty field as not reported', () => {
    expect(read('PTWRS,0,0,,,,,,')).toMatchObject({
      activity: '?',
      levels: [],
      active: [],
      positions: [undefined, undefined, undefined],
    });
    expect(read('PTWRA,17,5000,,-12')).toEqual({ kind: 'volts', ms: 17, millivolts: [5000, undefined, -12] });
  });

  it('stands at zero where it is said to stand at minus zero', () => {
    expect(read('PTWRS,0,0,still,L,0,-0.000')).toMatchObject({ positions: [0] });
    const found = read('PTWRS,0,0,still,L,0,-0.0');
    expect(found.kind === 'status' && Object.is(found.positions[0], 0)).toBe(true);
  });

  it.each([
    '+5',
    ' 5',
    '5 ',
    '0x5',
    '5e3',
    '1e999',
    'NaN',
    'Infinity',
    '5.0',
    '-1',
    '65536',
    '',
    '5'.repeat(400),
  ])('refuses "%s" as a sequence', (number) =>
    expect(['wrong-number', 'too-long']).toContain(why(`PTWRS,${number},0,still,L,0`)),
  );

  it.each(['4294967296', '-1', '1.5', '99999999999', ''])('refuses "%s" as a clock', (number) => {
    expect(why(`PTWRS,0,${number},still,L,0`)).toBe('wrong-number');
    expect(why(`PTWRE,0,${number},0,H`)).toBe('wrong-number');
    expect(why(`PTWRA,${number},5000`)).toBe('wrong-number');
  });

  it.each([
    ['123.4567890', 123.456789],
    ['-1.2345678901', -1.2345678901],
    ['00000001.25', 1.25],
  ])('takes a position with however many digits: %s', (text, position) =>
    expect(read(`PTWRS,0,0,still,L,0,${text}`)).toMatchObject({ positions: [position] }),
  );

  it.each(['.5', '5.', '+1.0', '1e3', '0x1', 'NaN', '--1', '1.0.0', '12345678', ' 1'])(
    'refuses "%s" as a position',
    (number) => expect(why(`PTWRS,0,0,still,L,0,${number}`)).toBe('wrong-number'),
  );

  it.each([
    ['PTWRS,0,0,still,L', 'wrong-field-count'],
    ['PTWRS,0,0,still,LL,0', 'wrong-field-count'],
    ['PTWRS,0,0,still,L,0,1,2,3,4,5,6,7,8,9,10', 'wrong-field-count'],
    ['PTWRS,0,0,resting,L,0', 'wrong-number'],
    ['PTWRS,0,0,still,h,0', 'wrong-number'],
    ['PTWRE,0,0,0', 'wrong-field-count'],
    ['PTWRE,0,0,0,H,1', 'wrong-field-count'],
    ['PTWRE,0,0,64,H', 'wrong-number'],
    ['PTWRE,0,0,0,?', 'wrong-number'],
    ['PTWRD,1,mm,XYZ', 'wrong-field-count'],
    ['PTWRD,2,mm,XYZ,a', 'unknown-sentence'],
    ['PTWRD,1,cm,XYZ,a', 'wrong-number'],
    ['PTWRD,1,mm,XYX,a', 'wrong-number'],
    ['PTWRD,1,mm,XYQ,a', 'wrong-number'],
    ['PTWRD,1,mm,XYZ,a a', 'wrong-number'],
    ['PTWRD,1,mm,XYZ,a  b', 'wrong-number'],
    ['PTWRD,1,mm,XYZ,Door', 'wrong-number'],
    [`PTWRD,1,mm,XYZ,${'n'.repeat(25)}`, 'wrong-number'],
    ['PTWRN,4,', 'wrong-number'],
    ['PTWRN,63,a b', 'wrong-number'],
    ['PTWRQ', 'unknown-sentence'],
    ['', 'unknown-sentence'],
  ])('reads %s as %s', (body, expected) => expect(why(body)).toBe(expected));

  it('starts anew at a $ inside the line', () => {
    const whole = framed(statusBody(7, 70));
    expect(readSentence(`$PTWRS,6,60,sti${whole}`)).toEqual(readSentence(whole));
    expect(readSentence(`\x00\xff${whole}`)).toEqual(readSentence(whole));
    expect(readSentence(`${whole}$`)).toEqual({ kind: 'unreadable', why: 'not-a-sentence' });
  });

  it.each([
    '',
    '$',
    '*',
    'hello',
    '$PTWRQ',
    '$PTWRQ*5',
    '$PTWRQ*5a',
    `${framed('PTWRQ')} `,
    '$PT*WRQ*00',
    '$\x01*01',
  ])('finds no sentence in %j', (text) =>
    expect(readSentence(text)).toEqual({ kind: 'unreadable', why: 'not-a-sentence' }),
  );

  it('may be 240 bytes with its line end, and no more', () => {
    // Eight names of 24 letters and one that fills the line up to its length.
    const names = [...'abcdefgh'].map((letter) => letter.repeat(24)).join(' ');
    const filled = (length: number) => framed(`PTWRD,1,mm,,${names} ${'z'.repeat(length - 216)}`);
    expect(filled(239)).toHaveLength(239);
    expect(readSentence(filled(239)).kind).not.toBe('unreadable');
    expect(readSentence(filled(240))).toEqual({ kind: 'unreadable', why: 'too-long' });
    expect(readSentence(framed(statusBody(1, 1)), 1)).toEqual({ kind: 'unreadable', why: 'too-long' });
  });
});

import { describe, expect, it } from 'vitest';
import type { SignalEvent } from '../../../src/model/signal-event.ts';
import { ms } from '../../../src/model/units.ts';
import { vcd } from '../../../src/report/signals/vcd.ts';
import { readDump } from './vcd-grammar.ts';

const change = (at: number, input: string, level: 'H' | 'L' | '?', active: '0' | '1' | '?'): SignalEvent => ({
  kind: 'change',
  at: ms(at),
  arrived: ms(at),
  input,
  level,
  active,
});
const broken = (at: number): SignalEvent => ({
  kind: 'break',
  at: ms(at),
  arrived: ms(at),
  why: 'lost-port',
});

const head = {
  toolVersion: '1.2.3',
  started: '2026-01-02T03:04:05Z',
  machine: 'Plywood router',
  inputs: ['x-home', '0z'],
};
const dumpOf = (events: readonly SignalEvent[], inputs: readonly string[] = head.inputs) =>
  readDump([...vcd({ ...head, inputs }, events)].join(''));
/** time, name, value of every change after the initial values. */
const told = (events: readonly SignalEvent[]) => {
  const { changes, variables } = dumpOf(events);
  const name = (code: string) => variables.find((each) => each.code === code)?.reference;
  return changes.slice(variables.length).map(({ time, value, code }) => `${time} ${name(code)} ${value}`);
};

describe('a value change dump', () => {
  it('declares a level and an active wire for each input, under names the language takes', () => {
    const { variables, scopes, sections } = dumpOf([]);
    expect(variables.map(({ type, size, reference }) => `${type} ${size} ${reference}`)).toEqual([
      'wire 1 level_x_home',
      'wire 1 active_x_home',
      'wire 1 level_0z',
      'wire 1 active_0z',
    ]);
    expect({ scopes, scale: sections['$timescale'] }).toEqual({ scopes: ['inputs'], scale: '1 us' });
  });

  it('begins with every wire unknown: nothing was heard yet', () => {
    expect(dumpOf([]).changes.map(({ time, value }) => `${time} ${value}`)).toEqual([
      '0 x',
      '0 x',
      '0 x',
      '0 x',
    ]);
  });

  it('tells changes in microseconds, high as 1, and only what changed', () => {
    const events = [
      change(1.5, 'x-home', 'L', '0'),
      change(2.25, 'x-home', 'H', '0'),
      change(2.25, '0z', 'H', '?'),
    ];
    expect(told(events)).toEqual([
      '1500 level_x_home 0',
      '1500 active_x_home 0',
      '2250 level_x_home 1',
      '2250 level_0z 1',
    ]);
  });

  it('knows nothing any more once the stream broke off', () => {
    expect(told([change(1, 'x-home', 'L', '0'), broken(2), change(3, 'x-home', 'L', '0')])).toEqual([
      '1000 level_x_home 0',
      '1000 active_x_home 0',
      '2000 level_x_home x',
      '2000 active_x_home x',
      '3000 level_x_home 0',
      '3000 active_x_home 0',
    ]);
  });

  it('gives each of 64 inputs its own codes', () => {
    const inputs = Array.from({ length: 64 }, (_, i) => `in-${i}`);
    expect(new Set(dumpOf([], inputs).variables.map(({ code }) => code)).size).toBe(128);
  });

  it('lets no text of a file become a keyword', () => {
    const text = [
      ...vcd({ ...head, machine: '$end $var wire 1 ! x $end \u001b[2J', started: '$end' }, []),
    ].join('');
    expect(readDump(text).variables).toHaveLength(4);
    expect(text).not.toContain('\u001b');
  });
});

describe('the grammar as the tests hold it', () => {
  it.each([
    '$enddefinitions $end #2 #1',
    '$enddefinitions $end 1!',
    '$var wire 1 ! a-b $end $enddefinitions $end',
    '$scope module a $end $enddefinitions $end',
    '$timescale 2 us $end $enddefinitions $end',
    '$date now',
  ])('refuses %s', (text) => expect(() => readDump(text)).toThrow());
});

import { describe, expect, it } from 'vitest';
import { checksOption, countOption, faceOption, onlyOption, timeOption } from '../../src/console/options.ts';
import { ToolError } from '../../src/model/tool-error.ts';
import { machine } from './events.ts';

const refused = (work: () => unknown): string => {
  try {
    work();
  } catch (cause) {
    if (cause instanceof ToolError) return `${cause.code}: ${cause.message} ${cause.tryNext}`;
  }
  return 'not refused';
};

describe('options', () => {
  it.each([
    ['10s', 10],
    ['2min', 120],
    ['90', 90],
    ['1.5 s', 1.5],
    ['2500ms', 2.5],
  ])('reads %s as %d s', (text, value) => {
    expect(timeOption('rest', text, 1, 600)).toBe(value);
  });

  it.each(['', 'ten', '0s', '-1s', '11min', '1e2', '10 hours', 'Infinity', '10s\u001b[31m'])(
    'refuses %j as a time',
    (text) => {
      expect(refused(() => timeOption('rest', text, 1, 600))).toContain('wrong-usage: --rest');
    },
  );

  it.each(['0', '31', '3.5', '-1', 'x', ''])('refuses %j presses', (text) => {
    expect(refused(() => countOption('presses', text, 1, 30))).toContain('from 1 to 30');
  });

  it('takes checks in any spelling of a list, in the order of the house, and says where a soak is done', () => {
    const has = ['rest', 'press', 'open-wire', 'stop'] as const;
    expect(checksOption(['stop, rest', 'press'], has)).toEqual(['rest', 'press', 'stop']);
    expect(checksOption([], has)).toEqual(has);
    expect(refused(() => checksOption(['soak'], has))).toContain('watch with --soak');
    expect(refused(() => checksOption(['pres'], has))).toContain('not understood');
    expect(refused(() => checksOption([','], has))).toContain('not understood');
  });

  it('takes an input for all its switches and refuses what the machine file does not name', () => {
    expect(onlyOption(['y-limits,x-home'], machine())).toEqual(['x-home', 'y-limits/y-min']);
    expect(onlyOption(['y-limits/y-min'], machine())).toEqual(['y-limits/y-min']);
    expect(onlyOption([], machine())).toBeUndefined();
    expect(refused(() => onlyOption(['z-home'], machine()))).toContain('x-home');
  });

  it('shows the screen on a terminal and lines elsewhere, unless told', () => {
    expect(faceOption(undefined, true)).toBe('screen');
    expect(faceOption(undefined, false)).toBe('lines');
    expect(faceOption('json', true)).toBe('json');
    expect(refused(() => faceOption('screen', false))).toContain('needs a terminal');
    expect(refused(() => faceOption('gui', true))).toContain('screen, lines or json');
  });
});

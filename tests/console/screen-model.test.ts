import { describe, expect, it } from 'vitest';
import { cellsOf } from '../../src/console/painting/cells.ts';
import { blockGlyphs, letterGlyphs } from '../../src/console/painting/glyphs.ts';
import { type Canvas, type Row, textOf } from '../../src/console/painting/row.ts';
import { screenRows } from '../../src/console/painting/screen-model.ts';
import { ScreenState } from '../../src/console/painting/screen-state.ts';
import { actions } from '../words/asks.ts';
import { heard, machine, notReached, press, shown, status, verdict } from './events.ts';

const at80x24: Canvas = { width: 80, height: 24, glyphs: blockGlyphs, now: 0 };
const texts = (rows: readonly Row[]): readonly string[] => rows.map(textOf);

function stateWith(
  inputs: Readonly<Record<string, '1' | '0'>> = { 'x-home': '0', 'y-home': '0' },
): ScreenState {
  const state = new ScreenState(machine());
  state.take({ kind: 'reading', reading: status(1000, inputs) }, 0);
  return state;
}

describe('the screen', () => {
  it('fits any ask into any window, from a phone’s to a wall’s', () => {
    for (const [width, height] of [
      [80, 24],
      [132, 50],
      [60, 16],
      [40, 12],
      [20, 5],
      [10, 2],
    ] as const)
      for (const action of actions)
        for (const glyphs of [blockGlyphs, letterGlyphs]) {
          const state = stateWith();
          state.take({ kind: 'verdict', verdict, restored: false }, 0);
          state.take(shown(1, action), 0);
          const rows = texts(screenRows(state, { width, height, glyphs, now: 0 }));
          expect(rows.length).toBeLessThanOrEqual(height);
          for (const row of rows) expect(cellsOf(row), row).toBeLessThanOrEqual(width);
        }
  });

  it('shows the whole instruction, every caution and every answer of every ask at 80 by 24', () => {
    for (const action of actions) {
      const state = stateWith();
      const ask = shown(1, action);
      state.take({ kind: 'verdict', verdict, restored: false }, 0);
      state.take(
        { kind: 'notice', topic: 'something-out', text: `Still out: ${'a plug and '.repeat(30)}` },
        0,
      );
      state.take(ask, 0);
      const page = texts(screenRows(state, at80x24)).join(' ').replaceAll(/\s+/g, ' ');
      for (const text of [ask.text, ...ask.cautions]) expect(page).toContain(text);
      for (const answer of ask.answers) expect(page).toContain(` ${answer} `);
    }
  });

  it('draws what to do in letters several rows high at 80 by 24', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home', 2)), 0);
    const rows = texts(screenRows(state, at80x24));
    const drawn = rows.filter((row) => /[█▀▄▌▐]{2}/.test(row) && !row.includes('home'));
    expect(drawn.length).toBeGreaterThanOrEqual(6);
  });

  it('counts presses in squares: filled ones are done', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home', 3)), 0);
    const rows = texts(screenRows(state, { ...at80x24, width: 30, height: 12 }));
    expect(rows.some((row) => /■ ?■ ?□/.test(row))).toBe(true);
  });

  it('tells a live input by a word and a shape, the one asked for by a pointer', () => {
    const state = stateWith({ 'x-home': '1', 'y-home': '0' });
    state.take(shown(1, press('x-home')), 0);
    const rows = texts(screenRows(state, at80x24));
    expect(rows.find((row) => row.includes(' x-home  '))).toMatch(/▶ x-home +■ ACTIVE/);
    expect(rows.find((row) => row.includes(' y-home  '))).toMatch(/^ {3}y-home +□ inactive/);
  });

  it('keeps the input asked for and those that changed last where 64 inputs do not fit, and counts the rest', () => {
    const many = Object.fromEntries(Array.from({ length: 64 }, (_, i) => [`in-${i}`, '0' as const]));
    const state = new ScreenState(machine());
    state.take({ kind: 'reading', reading: status(0, { ...many, 'x-home': '0' }) }, 0);
    state.take({ kind: 'reading', reading: status(500, { ...many, 'in-40': '1', 'x-home': '0' }) }, 0);
    state.take(shown(1, press('x-home')), 0);
    const page = texts(screenRows(state, at80x24)).join('\n');
    expect(page).toMatch(/▶ x-home/);
    expect(page).toMatch(/in-40 +■ ACTIVE/);
    expect(page).toMatch(/\d\d more inputs, none of them active/);
  });

  it('names every input that is on, where it has no row of its own', () => {
    const many = Object.fromEntries(Array.from({ length: 64 }, (_, i) => [`in-${i}`, '0' as const]));
    const state = stateWith({ 'x-home': '0', ...many, 'in-7': '1', 'in-9': '1' });
    state.take({ kind: 'reading', reading: status(900, { 'x-home': '0', ...many, 'in-7': '1' }) }, 0);
    for (let i = 10; i < 40; i++)
      state.take(
        {
          kind: 'reading',
          reading: status(2000 + i, { 'x-home': '0', ...many, 'in-7': '1', [`in-${i}`]: '1' }),
        },
        0,
      );
    state.take(shown(1, press('x-home')), 0);
    for (const [width, height] of [
      [80, 24],
      [60, 18],
    ] as const) {
      const page = texts(screenRows(state, { ...at80x24, width, height })).join('\n');
      expect(page).toMatch(/\d\d more inputs: in-7 ACTIVE/);
    }
  });

  it('names an input that is ACTIVE whatever is asked, at 80 by 24; where one is to answer, in a small window too', () => {
    const state = stateWith({ 'x-home': '0', 'y-home': '0', a: '0', b: '0', c: '0', 'hatch-9': '1' });
    state.take({ kind: 'verdict', verdict, restored: false }, 0);
    for (const action of actions) {
      state.take(shown(1, action), 0);
      expect(texts(screenRows(state, at80x24)).join('\n')).toMatch(/hatch-9/);
    }
    state.take(shown(1, press('x-home')), 0);
    const small = texts(screenRows(state, { ...at80x24, width: 60, height: 14 })).join('\n');
    expect(small).toMatch(/▶ x-home +□ inactive +5 more inputs: hatch-9 ACTIVE/);
    const least = texts(screenRows(state, { ...at80x24, width: 40, height: 12 })).join('\n');
    expect(least).toMatch(/▶ x-home +□ inactive +hatch-9 ACTIVE/);
  });

  it('keeps what it cannot do and how far the work has come apart, however narrow the window', () => {
    const state = stateWith();
    state.verdicts = 38;
    for (const check of ['press', 'open-wire', 'homing', 'stopping'] as const)
      for (let width = 34; width <= 132; width++) {
        state.take(shown(120, press('x-home'), check), 0);
        const [top = ''] = texts(screenRows(state, { ...at80x24, width }));
        expect(top).toMatch(
          /^ tellwire .*cannot stop the machine( {2,}(\w+ )*\w+(, ask 120)?(, 38 judged)?)? *$/,
        );
      }
  });

  it('says which input answered, when it was another than the one asked for', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home')), 0);
    state.take(heard('y-home', '1'), 10);
    state.take(heard('y-home', '0'), 900);
    state.take({ kind: 'ended', id: 1, by: 'seen' }, 1000);
    const page = texts(screenRows(state, at80x24)).join('\n');
    expect(page).toContain('◇ Seen: y-home answered, not x-home.');
  });

  it('counts nothing as judged that the session ended before', () => {
    const state = stateWith();
    state.take({ kind: 'verdict', verdict, restored: false }, 0);
    state.take({ kind: 'verdict', verdict: notReached('press', 'y-home'), restored: false }, 0);
    expect(state.verdicts).toBe(1);
    expect(state.verdict[0]).toContain('Open wire, x-home');
  });

  it('rings and echoes an edge of the switch asked for, and names another that answered', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home')), 0);
    expect(state.take(heard('x-home', '1'), 10)).toBe(true);
    expect(texts(screenRows(state, at80x24)).join('\n')).toContain('◆ Heard: x-home went active.');
    state.take(heard('y-home', '1'), 20);
    expect(texts(screenRows(state, at80x24)).join('\n')).toContain(
      '◇ Heard: y-home went active. Asked for was x-home.',
    );
  });

  it('keeps saying what is out and that the stream is gone', () => {
    const state = stateWith();
    state.take({ kind: 'notice', topic: 'something-out', text: 'Still out: the plug of x-home.' }, 0);
    state.take({ kind: 'notice', topic: 'stream-lost', text: 'The stream broke off.' }, 0);
    const page = texts(screenRows(state, at80x24)).join('\n');
    expect(page).toContain('Still out: the plug of x-home.');
    expect(page).toContain('The stream broke off.');
  });

  it('shows hostile text of a machine file as text', () => {
    const found = machine();
    const inputs = found.inputs.map((input) => ({
      ...input,
      switches: input.switches.map((each) => ({ ...each, place: '<img src=x onerror=1>\u001b[2J' })),
    }));
    const state = new ScreenState({ ...found, inputs: inputs as unknown as typeof found.inputs });
    state.take(shown(1, press('x-home')), 0);
    const page = texts(screenRows(state, { ...at80x24, glyphs: letterGlyphs })).join('\n');
    expect(page).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
  });

  it('says what the answers mean when asked', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home')), 0);
    state.explains = true;
    expect(texts(screenRows(state, at80x24)).join('\n')).toContain(' c  cannot: not possible here.');
  });

  it('names no digit as an answer: a digit is no answer here, and at the bench it presses a switch', () => {
    const state = stateWith();
    state.explains = true;
    for (const action of actions) {
      state.take(shown(1, action), 0);
      state.explains = true;
      const page = texts(screenRows(state, { ...at80x24, height: 60 }));
      expect(page.filter((row) => /^ \d+,/.test(row))).toEqual([]);
    }
  });

  it('counts the time down in squares and seconds', () => {
    const state = stateWith();
    state.take(shown(1, { action: 'hands-off' }, 'rest', 10), 0);
    expect(texts(screenRows(state, { ...at80x24, now: 7200 })).join('\n')).toContain('3 s ■■■□□□□□□□');
  });

  it('is plain letters where the terminal has no block signs', () => {
    const state = stateWith();
    state.take(shown(1, press('x-home')), 0);
    for (const row of texts(screenRows(state, { ...at80x24, glyphs: letterGlyphs })))
      expect(row).toMatch(/^[\x20-\x7e’…]*$/);
  });
});

import { describe, expect, it } from 'vitest';
import { answersTo } from '../../src/model/ask.ts';
import { answerWords } from '../../src/words/answer-words.ts';
import { askWords } from '../../src/words/ask-words.ts';
import { input, workshop } from '../report/workshop.ts';
import { actions, asked } from './asks.ts';

const all = actions.map((action) => ({ action, ...askWords(asked(action), workshop) }));
const told = (find: (action: (typeof actions)[number]) => boolean) =>
  all.filter(({ action }) => find(action));

describe('what a person is asked', () => {
  it.each(all)('$short: one short line for two metres, and a whole sentence', ({ text, short }) => {
    expect(short.length).toBeLessThanOrEqual(60);
    expect(short.length).toBeGreaterThan(5);
    expect(text).toMatch(/^[A-Z].*[.?]$/s);
  });

  it('names the switch in the words of its own place, not by its terminal alone', () => {
    for (const { text, action } of told((each) => 'subject' in each)) {
      expect(text, action.action).toContain('left end of the long axis');
      expect(text).toContain('x-home');
    }
  });

  it('shows at least one caution with everything that brings a hand near the machine', () => {
    for (const { cautions, short } of all) expect(cautions, short).not.toHaveLength(0);
  });

  it('says at the start that the tool only listens and cannot stop the machine', () => {
    const [start] = told(({ action }) => action === 'hands-off');
    expect(start?.cautions.join(' ')).toMatch(/only listens.*cannot stop the machine.*emergency stop/);
  });

  it('warns before the first press of motor power, of the axis that can drop, and of sleeves', () => {
    const [first, second] = told(({ action }) => action === 'press');
    expect(first?.cautions.join(' ')).toMatch(/Motor and spindle power off/);
    expect(first?.cautions.join(' ')).toMatch(/Z.*can drop/);
    expect(first?.cautions.join(' ')).toMatch(/sleeves/);
    expect(second?.text).toMatch(/^Again: .*press 2 of 3/);
  });

  it('says that a press with the plug out expects no answer, and why', () => {
    const [control] = told((each) => each.action === 'press' && each.expect === 'no-answer');
    expect(control?.text).toMatch(/No answer is expected/);
    expect(control?.text).toMatch(/another plug than the right one was pulled/);
  });

  it('warns before every unplug of motor plugs under power, and asks for a photograph and a tag', () => {
    for (const { cautions } of told(({ action }) => action === 'unplug')) {
      expect(cautions.join(' ')).toMatch(/Never pull a motor plug while its drive has power/);
      expect(cautions.join(' ')).toMatch(/Photograph.*tag/);
    }
  });

  it('names the terminal and the neighbours that drop with it when the plug is at the controller', () => {
    const [there] = told((each) => each.action === 'unplug' && each.at === 'controller');
    expect(there?.text).toContain('terminal IN1, connector J4');
    expect(there?.text).toContain('x-far and y-limits sit on the same connector');
  });

  it('never asks to lift the return of a sensor alone', () => {
    const [sensor] = told((each) => each.action === 'unplug' && each.conductor === 'whole sensor plug');
    expect(sensor?.text).toMatch(/whole plug, with all its cores at once/);
    expect(sensor?.cautions.join(' ')).toMatch(/never lift the return core/);
  });

  it('says that a changing status is no proof that drive power is gone', () => {
    const [power] = told((each) => each.action === 'look' && each.topic === 'power');
    expect(power?.cautions.join(' ')).toMatch(/no proof that power is gone/);
  });

  it('asks for a latching stop to be pressed and then unlatched, and in the stop check to be left in', () => {
    const stop = {
      action: 'press',
      subject: 'stop',
      round: 1,
      rounds: 1,
      expect: 'answer',
      deaf: [],
    } as const;
    expect(askWords(asked(stop), workshop).text).toMatch(/until it latches.*then unlatch it/);
    expect(askWords(asked(stop, 'stop'), workshop).text).toMatch(/leave it pressed in/);
  });

  it('speaks of steel to a sensor, of opening to a door, of touching to a plate', () => {
    const press = (subject: string) =>
      askWords(asked({ action: 'press', subject, round: 1, rounds: 1, expect: 'answer', deaf: [] }), workshop)
        .text;
    expect(press('z-top')).toMatch(/^Hold a piece of steel/);
    expect(press('door')).toMatch(/^Open the door/);
    expect(press('plate')).toMatch(/^Operate the probe/);
  });

  it('falls back to side and axis, then to the name, where no place is given', () => {
    const bare = input('spare', {}, { subject: 'spare', duty: ['limit'] });
    const machine = { ...workshop, inputs: [...workshop.inputs, bare] };
    const press = { action: 'press', round: 1, rounds: 1, expect: 'answer', deaf: [] } as const;
    expect(askWords(asked({ ...press, subject: 'y-limits/y-min' }), machine).short).toBe(
      'Press: front end of Y',
    );
    expect(askWords(asked({ ...press, subject: 'spare' }), machine).short).toBe('Press: spare');
  });

  it('shows control characters in a place as escapes and keeps the short line short', () => {
    const nasty = input('x', {}, { subject: 'x', duty: ['limit'], place: `\u001b[2J${'far '.repeat(40)}` });
    const { text, short } = askWords(
      asked({ action: 'press', subject: 'x', round: 1, rounds: 1, expect: 'answer', deaf: [] }),
      { ...workshop, inputs: [nasty] },
    );
    expect(text).toContain('\\x1b[2J');
    expect(text).not.toContain('\u001b');
    expect(short.length).toBeLessThanOrEqual(60);
  });

  it('has words for every answer an ask takes', () => {
    for (const action of actions)
      for (const answer of answersTo(action)) expect(answerWords[answer]).not.toBe('');
  });
});

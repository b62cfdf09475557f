import { describe, expect, it } from 'vitest';
import { answerKeys, answerOfKey, answerOfLine } from '../../src/console/faces/answer-keys.ts';
import { type AskAction, answersTo } from '../../src/model/ask.ts';
import { actions } from '../words/asks.ts';

describe('keys for answers', () => {
  it('gives no two answers the same key in any ask, and no answer the key for help', () => {
    const keys = Object.values(answerKeys);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).not.toContain('?');
  });

  it('leaves no ask without a key for cannot, not sure, skip and stop', () => {
    for (const action of actions as readonly AskAction[])
      for (const key of ['c', 'u', 's', 'q'])
        expect(answerOfKey(key, answersTo(action)), `${action.action} ${key}`).toBeDefined();
  });

  it('never turns "no" into "not sure": what is not asked for is no answer', () => {
    expect(answerOfLine('no', answersTo({ action: 'hands-off' }))).toBeUndefined();
    expect(answerOfLine('n', answersTo({ action: 'hands-off' }))).toBeUndefined();
    expect(answerOfLine('n', answersTo({ action: 'look', topic: 'touched', subject: 'x' }))).toBe('no');
    expect(answerOfLine('not', answersTo({ action: 'look', topic: 'touched', subject: 'x' }))).toBe(
      'not-sure',
    );
    expect(answerOfLine('d', answersTo({ action: 'look', topic: 'power', subject: 'x' }))).toBeUndefined();
  });
});

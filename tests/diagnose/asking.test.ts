import { describe, expect, it } from 'vitest';
import { put } from '../../src/diagnose/procedures/asking.ts';
import type { Ended } from '../../src/model/procedure.ts';
import { ms, seconds } from '../../src/model/units.ts';

const ask = { check: 'scale', action: 'hands-off', seconds: seconds(1) } as const;
const window = { from: ms(0), to: ms(1), lead: undefined, readings: [] };

function told(end: Pick<Ended, 'answer' | 'value'>) {
  const asking = put(ask, { status: undefined });
  asking.next();
  const step = asking.next({ by: 'answer', ...end, window });
  if (!step.done) throw new Error('one ask has one end');
  const { answer, value } = step.value;
  return { answer, value };
}

describe('how an ask ended, as a procedure reads it', () => {
  it('has a number with the answer that is a number', () => {
    expect(told({ answer: 'value', value: 4.98 })).toEqual({ answer: 'value', value: 4.98 });
    expect(told({ answer: 'value', value: 0 })).toEqual({ answer: 'value', value: 0 });
  });

  it('has no number with any other answer, and no answer where its number is missing', () => {
    expect(told({ answer: 'done', value: 4.98 })).toEqual({ answer: 'done', value: undefined });
    expect(told({ value: 4.98 })).toEqual({ answer: undefined, value: undefined });
    expect(told({ answer: 'value' })).toEqual({ answer: undefined, value: undefined });
  });
});

import { describe, expect, it } from 'vitest';
import { dangersIn, motionSession } from '../acceptance/motion-bench.ts';
import { asksIn, type VirtualOutcome } from '../session/virtual-session.ts';

/** What was asked from the moment a danger was told of, as `action subject-or-topic`, looks left out. */
function askedAfterDanger({ events }: VirtualOutcome): readonly string[] {
  const from = events.findIndex(({ kind }) => kind === 'danger');
  return events.slice(from).flatMap((event) => {
    if (event.kind !== 'ask' || event.ask.action === 'look') return [];
    const { ask } = event;
    const of = 'topic' in ask ? ask.topic : 'axis' in ask ? ask.axis : 'subject' in ask ? ask.subject : '';
    return [`${ask.action} ${of ?? ''}`.trim()];
  });
}

const two = ['x-home', 'y-home', 'stop'];

describe('after a warning the person hit the stop', () => {
  it('is let out, and the drives are switched on again, before the next axis moves', async () => {
    const outcome = await motionSession({
      fault: 'home-end-wrong:X',
      only: two,
      checks: ['press', 'stop', 'seek'],
    });
    expect(dangersIn(outcome)).toEqual(['X heads-away']);
    expect(askedAfterDanger(outcome).slice(0, 4)).toEqual([
      'release stop',
      'power',
      'confirm way-free',
      'move Y',
    ]);
    const y = outcome.facts.verdicts.find(({ check, subject }) => check === 'seek' && subject === 'Y');
    expect(y?.status).toBe('proved');
  });

  it('stays in where she leaves it in: nothing moves any more', async () => {
    const outcome = await motionSession({
      fault: 'home-end-wrong:X',
      only: two,
      checks: ['press', 'stop', 'seek'],
      hands: {
        saysInstead: ({ action, check }) => (action === 'release' && check === 'seek' ? 'cannot' : undefined),
      },
    });
    expect(askedAfterDanger(outcome)).toEqual(['release stop']);
    const y = outcome.facts.verdicts.find(({ check, subject }) => check === 'seek' && subject === 'Y');
    expect(y).toMatchObject({ status: 'not-tested', missing: ['cannot'] });
  });
});

describe('a controller that halted in a motion', () => {
  it('is cleared by the person’s own control before the next axis moves, and she is told to look why', async () => {
    const outcome = await motionSession({
      fault: 'seek-short:X',
      stands: { X: 300, Y: 60 },
      only: two,
      checks: ['press', 'stop', 'seek'],
    });
    const clears = asksIn(outcome).filter(({ ask }) => ask.action === 'clear');
    expect(clears).toHaveLength(1);
    expect(clears[0]?.text).toContain('First look why it halted');
    const after = asksIn(outcome).slice(asksIn(outcome).findIndex(({ ask }) => ask.action === 'clear') + 1);
    expect(after.find(({ ask }) => ask.action === 'move')?.ask).toMatchObject({ axis: 'Y' });
  });
});

describe('on a sound machine', () => {
  it('nothing of this is asked', async () => {
    const outcome = await motionSession({ only: two });
    const motion = asksIn(outcome).filter(({ ask }) => ask.check === 'seek' || ask.check === 'homing');
    expect(motion.map(({ ask }) => ask.action)).not.toContain('release');
    expect(motion.map(({ ask }) => ask.action)).not.toContain('clear');
  });
});

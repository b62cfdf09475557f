import { describe, expect, it } from 'vitest';
import { type Random, randomFor } from '../../src/bench/random.ts';
import type { Activity } from '../../src/model/reading.ts';
import { contact, lines, machineFrom, play, type Truth, type World } from './stage.ts';

const machine = machineFrom(`machine: Two limits and a stop
inputs:
  left: { duty: [limit], axis: X, contact: normally closed, voltage: 5 V }
  right: { duty: [limit], axis: X, contact: normally open, voltage: 5 V }
  stop: { duty: [stop], contact: normally closed, voltage: 5 V }
axes: { X: { travel: 300 } }
`);
const sound = {
  left: contact('left', 'normally closed', 'open'),
  right: contact('right', 'normally open', 'closed'),
  stop: contact('stop', 'normally closed', 'open'),
};

/** Now and then a report does not tell of this input, as when the byte that stands for it arrived damaged. */
function withHoles({ level, active }: Truth, random: Random): Truth {
  let [at, hole] = [-1, false];
  const isHole = ({ time }: World) => {
    if (time !== at) [at, hole] = [time, random.happens(0.1)];
    return hole;
  };
  return {
    level: (world) => (isHole(world) ? '?' : level(world)),
    active: (world) => (isHole(world) ? '?' : active(world)),
  };
}

const commissioned = (truths: Readonly<Record<string, Truth>>, activity: () => Activity) => {
  const checks = ['rest', 'press', 'open-wire', 'stop'];
  const { verdicts, asks } = play({ machine, truths, checks, period: 50, activity });
  return { verdicts: lines(verdicts), asks: asks.length };
};

describe('a report that does not tell of an input', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('is no change of it and ends no ask (holes drawn by %i)', (seed) => {
    const random = randomFor(seed, 'holes');
    const holed = Object.entries(sound).map(([name, truth]) => [name, withHoles(truth, random)] as const);
    const told = commissioned(Object.fromEntries(holed), () => (random.happens(0.1) ? '?' : 'still'));
    expect(told).toEqual(commissioned(sound, () => 'still'));
    expect(told.verdicts).toContain('press left: proved');
    // A closing contact answers a press and goes unnoticed with its plug out.
    expect(told.verdicts).toContain('open-wire right: limited break-undetected');
  });
});

describe('an input that the controller does not always tell of', () => {
  const pressed = ({ pressed }: World) => pressed.has('left');
  const telling = (rest: '0' | '?', then: '1' | '?', level: 'L' | '?'): Truth => ({
    level: () => level,
    active: (world) => (pressed(world) ? then : rest),
  });
  const told = (left: Truth) =>
    commissioned({ ...sound, left }, () => 'still').verdicts.filter((each) => each.includes(' left:'));

  it('has answered no press: not to know is not to answer', () => {
    expect(told(telling('0', '?', 'L'))).toContain('press left: failed never-changes');
  });

  it.each([
    ['at rest only', telling('0', '?', '?')],
    ['when pressed only', telling('?', '1', '?')],
    ['never', telling('?', '?', '?')],
  ])('proves nothing and fails nothing where it is told of %s', (_, left) => {
    expect(told(left)).toContain('press left: inconclusive');
    const judged = told(left).filter((each) => !each.startsWith('rest'));
    expect(judged.filter((each) => each.includes('proved') || each.includes('failed'))).toEqual([]);
  });
});

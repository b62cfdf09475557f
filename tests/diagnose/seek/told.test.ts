import { describe, expect, it } from 'vitest';
import type { SeekAnswers } from '../../../src/diagnose/seek/observe.ts';
import { streamCases } from './cases.ts';
import { play } from './played.ts';

const caseNamed = (name: string) => {
  const found = streamCases.find((each) => each.name.startsWith(name));
  if (!found) throw new Error(`no case ${name}`);
  return found;
};
const told = (name: string, answers: SeekAnswers) => {
  const { played } = caseNamed(name);
  return play({ ...played, answers: { ...played.answers, ...answers } });
};

const blind = 'the direction setting';
const short = 'ends after the same way';

describe('what the stream cannot tell apart, the person at the machine can', () => {
  it.each<[string, string, SeekAnswers, readonly string[]]>([
    [
      'the tool went against the command',
      blind,
      { tool: 'positive' },
      ['direction-inverted', 'motor-coil-reversed'],
    ],
    [
      'it stood and buzzed',
      blind,
      { tool: 'none', buzzed: 'yes', standing: 'short-of-it' },
      ['motor-stutters'],
    ],
    [
      'it stood in silence',
      blind,
      { tool: 'none', buzzed: 'no', standing: 'short-of-it' },
      ['motor-stands-still'],
    ],
    [
      'it stands past its switch, which it never came to',
      blind,
      { standing: 'past-switch', reached: 'no' },
      ['beyond-the-dog'],
    ],
    ['it went over its switch', blind, { standing: 'past-switch', reached: 'yes' }, ['trip-not-taken']],
    [
      'it went the right way and ended short',
      short,
      { tool: 'negative', standing: 'short-of-it', reached: 'no' },
      ['seek-too-short'],
    ],
    ['it went away as commanded', 'the wrong end set', { tool: 'positive' }, ['seeks-wrong-end']],
    [
      'homing works and the tool goes the other way',
      'both set wrong: homing',
      { tool: 'negative', reached: 'yes' },
      ['mirrored'],
    ],
    ['the axis asked for moved', 'input plugs crossed', { movedAxis: 'this' }, ['inputs-crossed']],
    ['another axis moved', 'input plugs crossed', { movedAxis: 'other' }, ['motors-crossed']],
    [
      'something stood on the switch',
      'begins with its input active',
      { touched: 'yes' },
      ['stands-on-switch'],
    ],
    ['nothing stood on the switch', 'begins with its input active', { touched: 'no' }, ['input-stuck']],
    ['it did not come back', 'turns back by command', { cameBack: 'no' }, ['does-not-turn-back']],
    ['it came back', 'turns back by command', { cameBack: 'yes' }, ['does-not-clear']],
    ['it had reached its switch', 'finds its switch once', { reached: 'yes' }, ['trip-lost-to-bounce']],
    ['it was nowhere near its switch', 'finds its switch once', { reached: 'no' }, ['noise-trip']],
    [
      'it was at its switch each time',
      'trips wherever noise',
      { reached: 'yes' },
      ['loses-steps', 'switch-wanders'],
    ],
    ['a gauge shows it in one place', 'loses steps from', { gauge: 'steady' }, ['loses-steps']],
    ['a gauge shows it here and there', 'loses steps from', { gauge: 'wanders' }, ['switch-wanders']],
    ['it ran on at its switch', 'runs past what', { tool: 'negative', reached: 'yes' }, ['overruns']],
    ['a tape agrees', 'three sound seeks', { measured: 'true' }, ['healthy']],
    ['a tape does not', 'three sound seeks', { measured: 'scaled' }, ['scale-off']],
    ['it sank when the brake let go', 'Z that homes', { sagged: 'yes', measured: 'true' }, ['sags-at-start']],
    ['the beam stayed square', 'two motors, two', { racked: 'no', measured: 'true' }, ['healthy']],
    [
      'the beam twisted',
      'two motors, two',
      { racked: 'yes', measured: 'true' },
      ['gantry-motors-fight', 'gantry-sides-crossed'],
    ],
    [
      'one side stood still, the beam square',
      'two motors, one switch',
      { racked: 'no' },
      ['gantry-switch-dead'],
    ],
    [
      'it homes to the far corner',
      'one input with a switch',
      { tool: 'positive', reached: 'yes' },
      ['mirrored', 'homes-at-far-end'],
    ],
  ])('%s', (_, name, answers, left) => {
    expect(told(name, answers).names).toEqual(left);
  });

  it('names for every pair what would tell it apart, cheapest question or measurement, and says where nothing would', () => {
    const { candidates } = play(caseNamed(blind).played);
    expect(candidates.inseparable).toEqual([['direction-inverted', 'motor-coil-reversed']]);
    expect(candidates.separators.map(({ feature }) => feature)).toEqual([
      'tool',
      'reached',
      'standing',
      'buzzed',
    ]);
    expect(candidates.separators[0]).toMatchObject({ means: 'eyes' });
    const pairs = new Set(
      candidates.separators.flatMap((each) => each.pairs.map((pair) => pair.join(' | '))),
    );
    const all = candidates.left.flatMap((a, i) =>
      candidates.left.slice(i + 1).map((b) => `${a.name} | ${b.name}`),
    );
    const apart = candidates.inseparable.map((pair) => pair.join(' | '));
    expect(new Set([...pairs, ...apart])).toEqual(new Set(all));
  });

  it('answers that contradict what was seen leave nothing: that is said, not guessed', () => {
    expect(told('three sound seeks', { tool: 'positive' }).names).toEqual([]);
    expect(told('both set wrong, three', { reached: 'no' }).names).toEqual([]);
  });
});

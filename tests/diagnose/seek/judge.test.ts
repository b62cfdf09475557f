import { describe, expect, it } from 'vitest';
import { judgeSeek, type SeekJudgement } from '../../../src/diagnose/seek/judge.ts';
import { streamCases } from './cases.ts';
import { type Played, rolesOf, runOf } from './played.ts';

const judge = ({ axis, runs, answers = {}, mapProved = true, more }: Played): SeekJudgement => {
  const roles = rolesOf(axis, mapProved);
  return judgeSeek({ roles, runs: runs.map((setup) => runOf(setup, roles)), answers, mapProved, ...more });
};
const ofCase = (name: string, more: Partial<Played> = {}) => {
  const found = streamCases.find((each) => each.name.startsWith(name));
  if (!found) throw new Error(name);
  return judge({ ...found.played, ...more });
};
const kinds = ({ findings }: SeekJudgement) => findings.map(({ kind }) => kind);

describe('what the seeks of an axis come to', () => {
  it('is sound where three trips in one place prove where the tool really went', () => {
    expect(ofCase('three sound seeks')).toMatchObject({
      says: 'sound',
      findings: [],
      direction: { known: true, sign: 1, evidence: 'repeated' },
    });
  });

  it('stays open after a single one: the stream knows commands only', () => {
    expect(ofCase('a sound seek')).toMatchObject({ says: 'open', findings: [], direction: { known: false } });
  });

  it('knows the direction as told where only the person saw it', () => {
    expect(ofCase('a sound seek', { answers: { tool: 'negative' } }).direction).toEqual({
      known: true,
      sign: 1,
      evidence: 'told',
    });
    expect(ofCase('a sound seek', { answers: { tool: 'positive' } }).direction).toEqual({
      known: true,
      sign: -1,
      evidence: 'told',
    });
    expect(ofCase('a sound seek', { answers: { tool: 'none' } }).direction).toEqual({ known: false });
  });

  it('is mirrored by place where a proved switch of known side was reached against the command', () => {
    const judged = ofCase('both set wrong, three');
    expect(judged).toMatchObject({
      says: 'faulty',
      direction: { known: true, sign: -1, evidence: 'repeated' },
    });
    expect(judged.findings).toEqual([{ kind: 'mirrored', situations: ['mirrored'] }]);
  });

  it.each([
    ['the direction setting', ['no-trip']],
    ['the wrong end set', ['heads-away', 'no-trip']],
    ['motor plugs crossed', ['wrong-switch']],
    ['begins on its switch', ['pressed-at-start']],
    ['a number set where', ['zeroed-in-place']],
    ['trips and does not turn', ['no-reversal']],
    ['goes on past', ['no-reversal']],
    ['turns back by command', ['does-not-clear']],
    ['turns and is zeroed', ['inferred-trip']],
    ['trips wherever', ['scattered-trips']],
    ['blocked by', ['blocked-elsewhere']],
    ['Z that seeks', ['heads-away', 'no-trip', 'heads-for-work']],
  ])('%s: every finding that any of its candidates would be', (name, expected) => {
    expect(kinds(ofCase(name))).toEqual(expected);
  });

  it('is no fault where Z only touches the work, nor where nothing was reported', () => {
    expect(ofCase('Z that goes down')).toMatchObject({ says: 'open', findings: [] });
    expect(ofCase('homes while its position')).toMatchObject({ says: 'open', findings: [] });
  });

  it('is said to contradict itself where answers and stream cannot both be right', () => {
    expect(ofCase('three sound seeks', { answers: { tool: 'positive' } }).says).toBe('contradictory');
  });
});

describe('a stream that carries levels alone', () => {
  it('comes to the same as one with active bits, where the level at rest is known', () => {
    const { played } =
      streamCases.find(
        ({ name }) => name === 'three sound seeks of a switch that is alone on its input and of known side',
      ) ?? {};
    if (!played) throw new Error('the case');
    const roles = rolesOf(played.axis);
    const level = { level: 'L', active: '?' } as const;
    const rest = Object.fromEntries([...roles.home, ...roles.farEnd].map((input) => [input, level]));
    const runs = played.runs.map((setup) => runOf({ ...setup, levelsOnly: true }, roles, undefined, rest));
    expect(judgeSeek({ roles, runs, answers: {}, mapProved: true })).toMatchObject({ says: 'sound' });
  });
});

import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { contact, lines, machineFrom, play, type Truth, type World } from './stage.ts';

const machine = machineFrom(`machine: Two switches
axes:
  X: { travel: 100 }
inputs:
  a: { duty: [home], place: left, voltage: 5 V }
  b: { duty: [home], place: right, voltage: 5 V }
`);
const nc = (subject: string) => contact(subject, 'normally closed', 'open');
const healthy = { a: nc('a'), b: nc('b') };
const judged = (truths: Record<string, Truth>, more: Partial<Parameters<typeof play>[0]> = {}) =>
  lines(play({ machine, truths, ...more }).verdicts);

describe('a press that another input answers', () => {
  const wrongOnce =
    (round: number, instead: string) =>
    (ask: Ask, subject: string): string =>
      ask.action === 'press' && subject === 'a' && ask.round === round ? instead : subject;

  it('a press on a wrong switch comes again, and is told beside the right ones', () => {
    for (const round of [1, 2, 3]) {
      const { verdicts, asks } = play({
        machine,
        truths: healthy,
        checks: ['press'],
        handles: wrongOnce(round, 'b'),
      });
      expect(verdicts[0]).toMatchObject({
        subject: 'a',
        status: 'limited',
        evidence: 'repeated',
        missing: [],
        findings: [
          { kind: 'another-answered', input: 'a', answeredBy: ['b'], elsewhere: 1, answered: 3, asked: 4 },
        ],
        facts: { presses: { asked: 4, answered: 3, elsewhere: 1 } },
      });
      expect(asks.filter((ask) => ask.action === 'press' && ask.subject === 'a')).toHaveLength(4);
      expect(lines(verdicts.slice(1)).filter((each) => !each.endsWith('proved'))).toEqual([]);
    }
  });

  it('fewer right presses than were asked for neither pass a switch nor call its contact bad', () => {
    const twice = (ask: Ask, subject: string): string =>
      ask.action === 'press' && subject === 'a' && (ask.round === 2 || ask.round === 6) ? 'b' : subject;
    const refused = (ask: Ask) => (ask.action === 'press' && ask.round === 4 ? ('skip' as const) : undefined);
    for (const more of [
      { handles: twice, presses: 5 },
      { handles: wrongOnce(2, 'b'), says: refused },
    ]) {
      const { verdicts } = play({ machine, truths: healthy, checks: ['press'], ...more });
      expect(lines(verdicts)[0]).toBe('press a: inconclusive another-answered');
      expect(verdicts[0]?.missing).toEqual(['press-again']);
    }
  });

  it('noise on another input makes no press of one that went unseen', () => {
    const b = nc('b');
    let since: number | undefined;
    const isAway = ({ pressed, time }: World): boolean => {
      if (pressed.has('nothing but noise')) since ??= time;
      return since !== undefined && time - since < 60;
    };
    const noisy: Truth = {
      level: (world) => (isAway(world) ? 'H' : b.level(world)),
      active: (world) => (isAway(world) ? '1' : b.active(world)),
    };
    const handles = wrongOnce(2, 'nothing but noise');
    expect(judged({ ...healthy, b: noisy }, { checks: ['press'], handles })[0]).toBe(
      'press a: inconclusive conflicting-answers',
    );
  });

  it('a wrong press hides no fault that the right ones show', () => {
    const reversed = { ...healthy, a: contact('a', 'normally closed', 'closed') };
    expect(judged(reversed, { checks: ['press'], handles: wrongOnce(2, 'b') })[0]).toBe(
      'press a: failed polarity-reversed another-answered',
    );
  });

  it('a press that nothing answered fails the switch, whatever another one was answered by', () => {
    const handles = (ask: Ask, subject: string): string => {
      if (ask.action !== 'press' || subject !== 'a') return subject;
      return { 2: 'nothing', 4: 'b' }[ask.round] ?? subject;
    };
    expect(judged(healthy, { checks: ['press'], presses: 5, handles })[0]).toBe(
      'press a: failed misses-presses another-answered',
    );
  });

  it('concludes nothing where as many presses went to another input as to the own one', () => {
    const handles = (ask: Ask, subject: string): string =>
      ask.action === 'press' && subject === 'a' && ask.round > 1 ? 'b' : subject;
    for (const presses of [2, 3])
      expect(judged(healthy, { checks: ['press'], presses, handles })[0]).toBe(
        'press a: inconclusive conflicting-answers',
      );
  });
});

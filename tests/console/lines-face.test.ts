import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { LinesFace } from '../../src/console/faces/lines-face.ts';
import type { Reply } from '../../src/session/operator.ts';
import { heard, machine, notReached, press, shown, status, verdict } from './events.ts';

function meet(bell = false) {
  const input = new PassThrough();
  const output = new PassThrough();
  const face = new LinesFace({ input, output, machine: machine(), bell });
  const replies: Reply[] = [];
  face.start((reply) => replies.push(reply));
  const type = async (...lines: readonly string[]) => {
    for (const line of lines) input.write(`${line}\n`);
    await new Promise(setImmediate);
  };
  return { input, face, replies, type, said: () => String(output.read() ?? '') };
}

describe('the lines face', () => {
  it('gives one instruction, its cautions and its answers, then what was heard, seen and judged', () => {
    const { face, said } = meet();
    const ask = shown(7, press('x-home', 2));
    face.show(ask);
    face.show(heard('y-home', '1'));
    face.show({ kind: 'ended', id: 7, by: 'seen' });
    face.show({ kind: 'verdict', verdict, restored: false });
    face.show({ kind: 'finished', session: 'sessions/a', report: 'sessions/a/report.html', exit: 1 });
    const lines = said().split('\n');
    expect(lines.slice(0, 3)).toEqual(['', 'Ask 7. Press, x-home, press 2 of 3.', ask.text]);
    expect(lines.slice(3, 3 + ask.cautions.length)).toEqual(ask.cautions.map((each) => `Caution: ${each}`));
    expect(lines.slice(3 + ask.cautions.length)).toEqual([
      'Answers: 1 done, 2 cannot, 3 not-sure, 4 skip, 5 stop. The press itself is the answer; waiting up to 20 s.',
      'Heard: y-home went active.',
      'Seen: y-home answered, not x-home.',
      'Verdict: Open wire, x-home: Proved with limitation (seen once).',
      expect.stringMatching(/^ {2}.+ \(break-undetected\)$/),
      '',
      'Session folder: sessions/a',
      'Report: sessions/a/report.html',
      'Exit 1: at least one fault or limitation was found.',
      '',
    ]);
  });

  it('tells everything that a stopped session did not reach in one line', () => {
    const { face, said } = meet();
    face.show({ kind: 'verdict', verdict, restored: false });
    said();
    for (const subject of ['x-home', 'y-home', 'z-home', 'probe', 'door'])
      face.show({ kind: 'verdict', verdict: notReached('press', subject), restored: false });
    face.show({ kind: 'verdict', verdict, restored: false });
    face.show({ kind: 'verdict', verdict: notReached('seek', 'X'), restored: false });
    expect(said()).toMatch(/^Verdict: .+\n.+\n$/);
    face.show({ kind: 'finished', session: 'sessions/a', report: 'sessions/a/report.html', exit: 2 });
    expect(said().split('\n').slice(0, 2)).toEqual([
      'The session ended before these, and they are not tested: Press (x-home, y-home, z-home and 2 more); First seek (X).',
      '',
    ]);
  });

  it('calls nothing "on file" that was not tested', () => {
    const { face, said } = meet();
    face.show({
      kind: 'verdict',
      verdict: { ...notReached('press', 'x-home'), missing: ['skipped'] },
      restored: false,
    });
    expect(said()).toMatch(
      /^Verdict: Press, x-home: Not tested \(no evidence\)\.\n {2}Missing: it was skipped\.$/m,
    );
  });

  it('says of an ask from before the break that it comes again, in words and without its number', () => {
    const { face, said } = meet();
    face.show({ ...shown(12, press('x-home')), again: 10 });
    const told = said();
    expect(told).toContain('This was being asked when the session broke off, and is asked again.');
    expect(told).not.toContain('10');
  });

  it('says a word once where an input has the name of its check', () => {
    const { face, said } = meet();
    face.show(shown(3, press('stop', 1, 1), 'stop'));
    face.show({ kind: 'verdict', verdict: { ...verdict, check: 'stop', subject: 'stop' }, restored: false });
    const told = said();
    expect(told).toContain('\nAsk 3. Stop.\n');
    expect(told).toContain('\nVerdict: Stop: Proved with limitation');
  });

  it('draws nothing: no control byte but the line end, no sign that a screen reader would spell', () => {
    const { face, said } = meet();
    for (const action of [press('x-home'), { action: 'power', what: 'motors', to: 'off' } as const])
      face.show(shown(1, action));
    face.show({ kind: 'verdict', verdict, restored: true });
    face.show({ kind: 'reading', reading: status(0, { 'x-home': '1' }) });
    expect(said()).not.toMatch(/[^\n\x20-\x7e’…–°≥µ]/u);
  });

  it.each([
    ['d', 'done'],
    ['done', 'done'],
    ['1', 'done'],
    ['DONE', 'done'],
    [' 3 ', 'not-sure'],
    ['not sure', 'not-sure'],
    ['u', 'not-sure'],
    ['can', 'cannot'],
    ['q', 'stop'],
    ['s', 'skip'],
    ['stop.', 'stop'],
  ])('hears %j as %s', async (typed, answer) => {
    const { face, type, replies } = meet();
    face.show(shown(4, press('x-home')));
    await type(typed);
    expect(replies).toEqual([{ kind: 'answer', id: 4, answer }]);
  });

  it.each(['', 'maybe', '6', '0', 'no', 'n', 'yes', 'knob-free', 'donee', 'st op'])(
    'does not take %j for an answer to a press',
    async (typed) => {
      const { face, type, replies } = meet();
      face.show(shown(4, press('x-home')));
      await type(typed);
      expect(replies).toEqual([{ kind: 'wrong', found: typed }]);
    },
  );

  it('says what the answers mean when asked, without answering', async () => {
    const { face, type, replies, said } = meet();
    face.show(shown(4, press('x-home')));
    said();
    await type('?');
    expect(said().split('\n').slice(0, 2)).toEqual([
      '1, d, or done: I did it.',
      '2, c, or cannot: not possible here.',
    ]);
    expect(replies).toEqual([]);
  });

  it('takes nothing typed between two asks for an answer to the next', async () => {
    const { face, type, replies, said } = meet();
    face.show(shown(4, press('x-home')));
    face.show({ kind: 'ended', id: 4, by: 'seen' });
    said();
    await type('d');
    expect(said()).toBe('Nothing is asked just now.\n');
    expect(replies).toEqual([]);
  });

  it('is gone when nothing more can be typed', async () => {
    const { input, replies } = meet();
    input.end();
    await new Promise(setImmediate);
    expect(replies).toEqual([{ kind: 'gone' }]);
  });

  it('does not let an input that flickers drown the instruction', () => {
    const { face, said } = meet(true);
    face.show(shown(4, { action: 'hands-off' }));
    said();
    for (let i = 0; i < 500; i++) face.show(heard('y-home', i % 2 ? '0' : '1'));
    const lines = said().trim().split('\n');
    expect(lines).toHaveLength(7);
    expect(lines.at(-1)).toBe('y-home keeps changing; no more of it is told until the next ask.');
    expect(lines[0]).toBe('\u0007Heard: y-home went active.');
  });
});

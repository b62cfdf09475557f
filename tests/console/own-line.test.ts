import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { LinesFace } from '../../src/console/faces/lines-face.ts';
import { glyphsFor } from '../../src/console/painting/glyphs.ts';
import { textOf } from '../../src/console/painting/row.ts';
import { screenRows } from '../../src/console/painting/screen-model.ts';
import { ScreenState } from '../../src/console/painting/screen-state.ts';
import { ScreenKeys } from '../../src/console/screen-keys.ts';
import type { AskAction } from '../../src/model/ask.ts';
import type { Face, FaceEvent, Reply } from '../../src/session/operator.ts';
import { withOwnLine } from '../../src/session/own-line.ts';
import { machine, press, shown } from './events.ts';
import { tellwire } from './run.ts';

const move = {
  action: 'move',
  axis: 'X',
  direction: 'positive',
  distance: 5,
  unit: 'mm',
} as const satisfies AskAction;

/** A session’s side of the prompt behind a face; what would be written to the port is kept. */
function behind(face: Face) {
  const written: string[] = [];
  const replies: Reply[] = [];
  const own = withOwnLine(face, {
    ending: '\r\n',
    write: (text) => {
      written.push(text);
      return true;
    },
  });
  own.start((reply) => replies.push(reply));
  return { own, written, replies };
}

describe('a line of one’s own at the lines face', () => {
  function meet() {
    const [input, output] = [new PassThrough(), new PassThrough()];
    const met = behind(new LinesFace({ input, output, machine: machine(), bell: false }));
    const type = async (...lines: readonly string[]) => {
      for (const line of lines) input.write(`${line}\n`);
      await new Promise(setImmediate);
    };
    return { ...met, type, said: () => String(output.read() ?? '') };
  }

  it('is offered where the machine is to be moved, warned of, shown back, and written after yes', async () => {
    const { own, written, replies, type, said } = meet();
    own.show(shown(4, move));
    expect(said()).toContain('Type line to send your controller a line of your own.');
    await type('line');
    expect(said()).toContain('Motion can start at once.');
    await type('JOG X 5');
    expect(written).toEqual([]);
    expect(said()).toContain('These bytes would be written to the port: JOG X 5\\x0d\\x0a');
    await type('yes');
    expect(written).toEqual(['JOG X 5\r\n']);
    expect(replies).toEqual([]);
    await type('done');
    expect(replies).toEqual([{ kind: 'answer', id: 4, answer: 'done' }]);
  });

  it('is not written after anything but yes, and not at all where it is no plain line', async () => {
    const { own, written, replies, type, said } = meet();
    own.show(shown(4, move));
    await type('line', 'JOG X 5', 'y');
    expect(said()).toContain('Nothing was sent.');
    await type('line', 'JOG\tX', 'JOG X 6', 'yes');
    expect(said()).toContain(
      'Found: "\\x09" at place 4. Allowed: one line of 1 to 80 printable ASCII characters.',
    );
    expect(written).toEqual(['JOG X 6\r\n']);
    await type('line', '');
    expect(said()).toContain('Nothing was sent.');
    expect(replies).toEqual([]);
  });

  it('is not offered at a press, where the word is no answer', async () => {
    const { own, written, replies, type, said } = meet();
    own.show(shown(4, press('x-home')));
    expect(said()).not.toContain('a line of your own');
    await type('line');
    expect(replies).toEqual([{ kind: 'wrong', found: 'line' }]);
    expect(written).toEqual([]);
  });
});

describe('a line of one’s own on the screen', () => {
  function meet() {
    const state = new ScreenState(machine());
    let take: (reply: Reply) => void = () => {};
    const face: Face = {
      start: (given) => {
        take = given;
      },
      show: (event: FaceEvent) => void state.take(event, 0),
      close: () => {},
    };
    const met = behind(face);
    const keys = new ScreenKeys(
      state,
      (reply) => take(reply),
      () => false,
    );
    const press = (now: number, ...typed: readonly string[]) => {
      for (const each of typed) keys.press(each.length === 1 ? each : undefined, each, now);
    };
    const page = () =>
      screenRows(state, { width: 80, height: 24, glyphs: glyphsFor({ LC_ALL: 'C.UTF-8' }), now: 0 })
        .map(textOf)
        .join('\n');
    return { ...met, press, page };
  }

  it('has the page to itself from its key to its end; no letter of it is an answer', () => {
    const { own, written, replies, press: type, page } = meet();
    own.show(shown(4, move));
    expect(page()).toContain('a line of your own');
    type(0, 't');
    expect(page()).toContain('Motion can start at once.');
    type(0, ...'dsq5', 'enter');
    expect(page()).toContain('These bytes would be written to the port: dsq5\\x0d\\x0a');
    type(0, ...'yes', 'enter');
    expect(written).toEqual(['dsq5\r\n']);
    expect(replies).toEqual([]);
  });

  it('is dropped with Escape', () => {
    const { own, written, press: type, page } = meet();
    own.show(shown(4, move));
    type(0, 't', 'A', 'escape');
    expect(page()).not.toContain('Motion can start at once.');
    expect(written).toEqual([]);
  });

  it('gives way to a danger at once, and what is typed on for a moment answers nothing', () => {
    const { own, written, replies, press: type, page } = meet();
    own.show(shown(4, move));
    type(0, 't', ...'JOG X 5', 'enter');
    own.show({
      kind: 'danger',
      id: 4,
      axis: 'X',
      finding: 'heads-away',
      text: 'Stop it now, at the real stop.',
    });
    expect(page()).toContain('Stop it now, at the real stop.');
    type(0, ...'yes', 'enter');
    expect([written, replies]).toEqual([[], []]);
    type(5000, 'd');
    expect(replies).toEqual([{ kind: 'answer', id: 4, answer: 'done' }]);
  });
});

describe('--own-line', () => {
  it('is refused to a program that answers in a person’s place', async () => {
    const { code, err } = await tellwire('commission', '--port', 'bench', '--operator', 'json', '--own-line');
    expect(code).toBe(3);
    expect(err).toContain('does not go with --operator json');
  });

  it('is refused in line, where the operator’s own program commands', async () => {
    const { code, err } = await tellwire('inline', '--port', 'tcp://127.0.0.1:1', '--own-line');
    expect(code).toBe(3);
    expect(err).toContain('your own program commands the machine');
  });
});

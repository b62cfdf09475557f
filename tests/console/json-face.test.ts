import { PassThrough, Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { JsonFace } from '../../src/console/faces/json-face.ts';
import type { FaceEvent, Reply } from '../../src/session/operator.ts';
import { heard, press, shown, status, verdict } from './events.ts';

function meet() {
  const input = new PassThrough();
  const output = new PassThrough();
  const face = new JsonFace(input, output);
  const replies: Reply[] = [];
  face.start((reply) => replies.push(reply));
  const said = () => String(output.read() ?? '');
  return { input, output, face, replies, said };
}

/** What stands on the output for one event. */
const line = (event: FaceEvent): string => {
  const { face, said } = meet();
  face.show(event);
  return said();
};

const texts = ({ text, cautions }: { readonly text: string; readonly cautions: readonly string[] }): string =>
  `"text":${JSON.stringify(text)},"cautions":${JSON.stringify(cautions)}`;

// The expected lines are the published contract of the JSON operator, written out by hand.
describe('the operator as JSON', () => {
  const always = '"cannot","not-sure","skip","stop"]}\n';

  it('asks for a press with its input and its round, keys in the published order', () => {
    const ask = shown(7, press('x-home', 2));
    expect(line(ask)).toBe(
      `{"kind":"ask","id":7,"check":"press","action":"press","input":"x-home","round":2,"rounds":3,"seconds":20,${texts(ask)},"answers":["done",${always}`,
    );
  });

  it('names the switch beside the input where several share it', () => {
    const ask = shown(8, press('y-limits/y-min', 1, 1));
    expect(line(ask)).toContain('"input":"y-limits","switch":"y-min","round":1,"rounds":1,');
  });

  it.each([
    ['hands-off', { action: 'hands-off' }, '"action":"hands-off","seconds":20,', '"done",'],
    [
      'power',
      { action: 'power', what: 'motors', to: 'off' },
      '"action":"power","what":"motors","to":"off","seconds":20,',
      '"done",',
    ],
    [
      'release',
      { action: 'release', subject: 'x-home', watch: ['x-home'], why: 'held' },
      '"action":"release","input":"x-home","seconds":20,',
      '"done",',
    ],
    [
      'unplug',
      { action: 'unplug', subject: 'x-home', at: 'switch', conductor: 'signal plug' },
      '"action":"unplug","input":"x-home","at":"switch","conductor":"signal plug","seconds":20,',
      '"done",',
    ],
    [
      'replug',
      { action: 'replug', subject: 'x-home', at: 'controller', conductor: 'whole sensor plug' },
      '"action":"replug","input":"x-home","at":"controller","conductor":"whole sensor plug","seconds":20,',
      '"done",',
    ],
    [
      'clear',
      { action: 'clear', subject: 'x-home' },
      '"action":"clear","input":"x-home","seconds":20,',
      '"done",',
    ],
    [
      'look',
      { action: 'look', topic: 'touched', subject: 'x-home' },
      '"action":"look","input":"x-home","topic":"touched","seconds":20,',
      '"yes","no",',
    ],
    [
      'look at the power',
      { action: 'look', topic: 'power', subject: 'x-home' },
      '"topic":"power","seconds":20,',
      '"knob-free","lamp","meter","did-not",',
    ],
    [
      'confirm',
      { action: 'confirm', topic: 'propped', axes: ['Z'] },
      '"action":"confirm","topic":"propped","axis":"Z","seconds":20,',
      '"yes","no",',
    ],
  ] as const)('asks %s with its own keys and answers', (_name, action, keys, first) => {
    const ask = shown(3, action, 'open-wire');
    expect(line(ask)).toContain(keys);
    expect(line(ask).startsWith('{"kind":"ask","id":3,"check":"open-wire","action":')).toBe(true);
    expect(line(ask).endsWith(`"answers":[${first}${always}`)).toBe(true);
  });

  it.each<[string, FaceEvent, string]>([
    ['an ask seen', { kind: 'ended', id: 7, by: 'seen' }, '{"kind":"ended","id":7,"by":"seen"}\n'],
    [
      'an ask answered',
      { kind: 'ended', id: 7, by: 'answer', answer: 'done' },
      '{"kind":"ended","id":7,"by":"answer","answer":"done"}\n',
    ],
    [
      'a refusal',
      { kind: 'refused', id: 7, found: 'maybe', allowed: ['done', 'stop'] },
      '{"kind":"refused","id":7,"found":"maybe","allowed":["done","stop"]}\n',
    ],
    [
      'an edge',
      heard('y-home', '1', 12.5),
      '{"kind":"heard","arrived":12.5,"input":"y-home","level":"H","active":"1"}\n',
    ],
    [
      'a verdict',
      { kind: 'verdict', verdict, restored: false },
      '{"kind":"verdict","check":"open-wire","subject":"x-home","status":"limited","evidence":"edge","findings":[{"kind":"break-undetected","input":"x-home","breaks":[]}]}\n',
    ],
    [
      'the end',
      { kind: 'finished', session: 'a/b', report: 'a/b/report.html', exit: 1 },
      '{"kind":"finished","session":"a/b","report":"a/b/report.html","exit":1}\n',
    ],
    ['a reading', { kind: 'reading', reading: status(0, { 'x-home': '1' }) }, ''],
    ['a notice', { kind: 'notice', topic: 'stream-lost', text: 'gone' }, ''],
  ])('says %s', (_name, event, expected) => {
    expect(line(event)).toBe(expected);
  });

  it('marks what was said before a break', () => {
    expect(line({ kind: 'verdict', verdict, restored: true })).toContain('],"restored":true}\n');
    expect(line({ ...shown(9, press('x-home')), again: 7 })).toContain('"id":9,"again":7,"check"');
  });

  it('escapes what a terminal would act on', () => {
    const said = line({ kind: 'refused', id: 1, found: 'a\u009b31m\u202eb\u001b[2J', allowed: [] });
    expect(said).toContain('a\\u009b31m\\u202eb\\u001b[2J');
  });
});

describe('answers as JSON', () => {
  it('takes answers however the bytes are cut, with either line end, and a last line without one', async () => {
    const { input, replies } = meet();
    for (const part of [
      '{"id":7,"ans',
      'wer":"done"}\r',
      '\n{"id":8,"answer":"skip"}\n{"id":9,',
      '"answer":"stop"}',
    ])
      input.write(part);
    input.end();
    await new Promise(setImmediate);
    expect(replies).toEqual([
      { kind: 'answer', id: 7, answer: 'done' },
      { kind: 'answer', id: 8, answer: 'skip' },
      { kind: 'answer', id: 9, answer: 'stop' },
      { kind: 'gone' },
    ]);
  });

  it.each([
    'done',
    '',
    '{',
    '[]',
    'null',
    '7',
    '{"id":"7","answer":"done"}',
    '{"id":7}',
    '{"id":7,"answer":3}',
    '{"id":7.5,"answer":"done"}',
  ])('calls %j no answer', async (text) => {
    const { input, replies } = meet();
    input.write(`${text}\n`);
    await new Promise(setImmediate);
    expect(replies).toEqual([{ kind: 'wrong', found: text }]);
  });

  it('keeps no more of an endless line than it needs', async () => {
    const { input, replies } = meet();
    for (let i = 0; i < 200; i++) input.write('x'.repeat(1000));
    input.write('\n{"id":1,"answer":"done"}\n');
    await new Promise(setImmediate);
    expect(replies).toEqual([
      { kind: 'wrong', found: 'x'.repeat(200) },
      { kind: 'answer', id: 1, answer: 'done' },
    ]);
  });

  it('goes when its input closes or its output breaks, and throws nothing after', async () => {
    const input = new PassThrough();
    const output = new Writable({ write: (_chunk, _encoding, done) => done(new Error('EPIPE')) });
    const replies: Reply[] = [];
    const face = new JsonFace(input, output);
    face.start((reply) => replies.push(reply));
    face.show({ kind: 'ended', id: 1, by: 'seen' });
    await new Promise(setImmediate);
    face.show({ kind: 'ended', id: 2, by: 'seen' });
    expect(replies).toEqual([{ kind: 'gone' }]);
    face.close();
  });
});

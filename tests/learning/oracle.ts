import type { HandsOptions } from '../../src/bench/simulated-hands.ts';
import type { Shape } from '../../src/bench/speaking/shape.ts';
import { speakerFor } from '../../src/bench/speaking/speaker.ts';
import type { Answer, Ask } from '../../src/model/ask.ts';
import { takeApart } from '../../src/transport/stream/shapes/fields.ts';

/** Somebody who has the controller's papers before her: she knows which of two numbers is the machine coordinate, and what base a mask is in. */
export function papersOf(
  shape: Shape,
  inputs: number,
  axes: number,
  seed: number,
): NonNullable<HandsOptions['saysInstead']> {
  const positions = Array.from({ length: axes }, (_, i) => 40 + i * 7);
  const scale = { mm: 1, unit: 1, inch: 1 / 25.4, counts: 80, none: 1 }[shape.positions];
  const report = speakerFor(
    { ...shape, chatter: 0 },
    inputs,
    axes,
    seed,
  )({
    inputs: Array.from({ length: inputs }, () => false),
    positions,
    activity: 'still',
    ms: 1,
    seq: 1,
  });
  /** "brib.1 (zim)": the value under this name, in the line in which the word or name in brackets stands. */
  const valueAt = (label: string): number => {
    const [, field = '', where = ''] = /^(\S+)(?: \((.*)\))?$/.exec(label) ?? [];
    const lines = report.map((text) => ({ text, fields: takeApart(text).fields }));
    const has = ({ text, fields }: (typeof lines)[number], word: string) =>
      text.includes(word) || fields.some(({ path }) => path === word);
    const line = lines.find((each) => where.split(' ').every((word) => has(each, word)));
    const text = line?.fields.find(({ path }) => path === field)?.text;
    return Number.parseFloat(text ?? 'NaN');
  };
  return (ask: Ask): Answer | undefined => {
    if (ask.action !== 'confirm') return undefined;
    const [first = '', second] = ('shows' in ask && ask.shows) || [];
    if (ask.topic === 'which-base') {
      const base = { decimal: '10', hex: '16', binary: '2' }[shape.inputs as 'hex'];
      return second === base ? 'yes' : 'no';
    }
    if (ask.topic === 'means-active')
      // Where figures stand the other way round, 0 is what the papers call active.
      return 'yes';
    if (ask.topic !== 'which-position') return undefined;
    const [label = ''] = /^\S+(?: \([^)]*\))?/.exec(first) ?? [];
    return Math.abs(
      valueAt(label) - (positions[['X', 'Y', 'Z'].indexOf(ask.axes?.[0] ?? 'X')] ?? 0) * scale,
    ) < 1
      ? 'yes'
      : 'no';
  };
}

import { describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import { statesStudied, wiringStudied } from '../../src/report/wiring-record.ts';
import { weekend } from './weekend.ts';

const record = buildRecord(weekend);
const md = formats.md(record).text;
const html = formats.html(record).text;
const section = md.slice(md.indexOf('## Circuits'), md.indexOf('## What the findings mean'));

describe('the circuits in the commissioning record', () => {
  it('draws each circuit at rest, pressed and broken', () => {
    const drawn = html.match(/<figcaption>(at rest|pressed|at rest, signal core broken): seen as/g);
    expect(drawn).toHaveLength(3 * record.wirings.length);
  });

  // 5 V over 10 kohm: Ohm's law. A pin with nothing drawn from it stands at its supply.
  it('carries the voltages of the declared parts: the closed contact draws 0.5 mA, the open one leaves 5 V', () => {
    const [closed] = record.wirings;
    const [rest, pressed] = closed ? statesStudied(closed) : [];
    const terminal = (state: typeof rest) => state?.volts.find(({ node }) => node === 'terminal')?.volts;
    expect(terminal(rest)).toBeCloseTo(0, 2);
    expect(terminal(pressed)).toBeCloseTo(5, 2);
    expect(closed?.margins.wettingAmps).toBeCloseTo(0.0005, 5);
    expect(section).toContain('signal terminal of the controller 5.00 V');
  });

  // Common practice, no source: a closed contact to ground breaks safe, an open one breaks unseen.
  it('finds a broken core at once on a contact that rests closed, and not on one that rests open', () => {
    const foundOn = (subject: string) =>
      record.wirings
        .find(({ switches }) => switches.some((each) => each.subject === subject))
        ?.faults.find(({ fault }) => fault === 'signal-core-open')?.found;
    expect(foundOn('x-home')).toBe('at once');
    expect(foundOn('x-far')).not.toBe('at once');
  });

  it('computes with the contact that unplugging found, and says where it is from', () => {
    expect(section).toMatch(/\| x-far \| Circuit 2 \| normally open<br>found by unplugging \|/);
  });

  it('is pointed to from the results of each switch that has one', () => {
    const group = md.slice(md.indexOf('### x-far'), md.indexOf('### y-limits'));
    expect(group).toContain('circuit 2, under Circuits');
  });

  it('names the standard of the share, claims no level and says what was not computed', () => {
    expect(section).toContain('ISO 13849-1');
    expect(section).toContain('No performance level follows');
    expect(section).toMatch(/NOT COMPUTED for .*stop/);
    const none = formats.md(buildRecord({ ...weekend, wirings: [] })).text;
    expect(none).toMatch(/## Circuits\n\n.*\n\nNOT COMPUTED/);
  });

  it('keeps a part that is left out apart from one of no size, through JSON and back', () => {
    const [first] = weekend.wirings ?? [];
    if (!first) throw new Error('the fixture has a wiring');
    const values = first.study.wiring.values.map((each) =>
      each.name === 'filter' ? { ...each, nominal: Number.POSITIVE_INFINITY } : each,
    );
    const study = { ...first.study, wiring: { ...first.study.wiring, values } };
    const [built] = buildRecord({ ...weekend, wirings: [{ ...first, study }] }).wirings;
    expect(built?.wiring.values.find(({ name }) => name === 'filter')?.nominal).toBeUndefined();
    expect(built && wiringStudied(built).values.find(({ name }) => name === 'filter')?.nominal).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});

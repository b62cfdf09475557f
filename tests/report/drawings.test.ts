import { describe, expect, it } from 'vitest';
import { ms } from '../../src/model/units.ts';
import type { Trace } from '../../src/model/verdict.ts';
import { buildRecord } from '../../src/report/build-record.ts';
import { plotOf } from '../../src/report/drawings/plot.ts';
import { html } from '../../src/report/html.ts';
import { flatTrace, pressTrace, togetherTrace } from './traces.ts';
import { watched } from './watched.ts';
import { weekend } from './weekend.ts';

const drawings = (page: string) => [...page.matchAll(/<svg [^>]*role="img".*?<\/svg>/gs)].map(([svg]) => svg);

/** Reads the data of every waveform back out of the page. */
const drawn = (page: string) =>
  drawings(page)
    .filter((svg) => svg.includes('<g data-input="'))
    .map((svg) =>
      svg
        .split('<g data-input="')
        .slice(1)
        .map((part) => ({
          input: part.slice(0, part.indexOf('"')),
          points: [...part.matchAll(/data-t="([^"]*)" data-level="(.)" data-active="(.)"/g)].map(
            ([, t, level, active]) => ({ t: Number(t), level, active }),
          ),
        })),
    );

const press = pressTrace('x-home', 0, 960, { closedAtRest: true, activeWhenOpen: true });

describe('the drawn waveform', () => {
  it('shows every cited reading of every verdict and no other', () => {
    const cited = weekend.verdicts.flatMap(({ traces }) => traces);
    const found = drawn(html(buildRecord(weekend)));
    const text = (drawings: readonly unknown[]) => drawings.map((each) => JSON.stringify(each)).toSorted();
    expect(found).toHaveLength(cited.length);
    expect(text(found)).toEqual(text(cited.map(({ signals }) => signals)));
  });

  it('puts equal times at equal distances', () => {
    const [signal] = plotOf(press).signals;
    const points = signal?.points ?? [];
    const [first, ...rest] = points;
    const last = points.at(-1);
    if (!first || !last) throw new Error('a press has points');
    for (const { t, x } of rest)
      expect((x - first.x) / (last.x - first.x)).toBeCloseTo((t - first.t) / (last.t - first.t), 3);
  });

  it('leaves the doubt open between the last report of the old value and the first of the new', () => {
    const [lane] = plotOf(press).signals[0]?.lanes ?? [];
    const x = (t: number) => plotOf(press).signals[0]?.points.find((each) => each.t === t)?.x;
    expect(lane?.doubts).toHaveLength(2);
    expect(lane?.doubts[0]).toMatchObject({ from: x(288), to: x(304) });
    expect(lane?.runs.some(({ from, to }) => from < (x(304) ?? 0) && to > (x(288) ?? 0))).toBe(false);
  });

  it('draws active above not active, and high above low', () => {
    const [active, level] = plotOf(press).signals[0]?.lanes ?? [];
    expect(active?.runs.map(({ y }) => y)).toEqual([active?.bottom, active?.top, active?.bottom]);
    expect(level?.runs.map(({ y }) => y)).toEqual([level?.bottom, level?.top, level?.bottom]);
  });

  it('gives a value that is not reported no lane, and a mute signal a dotted middle line', () => {
    const mute = (active: '?' | '1') =>
      ({
        ...flatTrace('x', 'rest', 0, 1000, true, true),
        signals: [{ input: 'x', points: [0, 1000].map((t) => ({ t: ms(t), level: '?' as const, active })) }],
      }) satisfies Trace;
    expect(plotOf(mute('1')).signals[0]?.lanes.map(({ of }) => of)).toEqual(['active']);
    const [lane] = plotOf(mute('?')).signals[0]?.lanes ?? [];
    expect(lane?.runs.map(({ known }) => known)).toEqual([false]);
  });

  it('draws a single reading, and an empty span, without a number that is none', () => {
    const single = {
      ...press,
      signals: [{ input: 'x', points: press.signals[0]?.points.slice(0, 1) ?? [] }],
    };
    for (const trace of [single, { ...press, signals: [] }])
      expect(JSON.stringify(plotOf(trace))).not.toMatch(/null|NaN/);
  });

  it('tells its content to those who cannot see it, and needs no colour', () => {
    const page = html(buildRecord(watched));
    const svgs = drawings(page);
    const ids = svgs.flatMap((svg) => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const svg of svgs) {
      expect(svg).toMatch(/<title id="[^"]+">[^<]+<\/title><desc id="[^"]+">[^<]+<\/desc>/);
      for (const [, colour = ''] of svg.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/g))
        expect(new Set(colour.slice(1).match(colour.length > 4 ? /../g : /./g)).size).toBe(1);
    }
  });

  it('draws two inputs that move together one above the other on one time axis', () => {
    const plot = plotOf(togetherTrace('x-home', 'x-far'));
    expect(plot.signals.map(({ input }) => input)).toEqual(['x-home', 'x-far']);
    expect(plot.signals[1]?.lanes[0]?.doubts).toHaveLength(4);
  });
});

import { describe, expect, it } from 'vitest';
import type { EnvelopeFacts } from '../../src/model/envelope-facts.ts';
import { mm } from '../../src/model/units.ts';
import { endPlot } from '../../src/report/drawings/envelope/end-plot.ts';
import { stripPlot } from '../../src/report/drawings/envelope/strip-plot.ts';
import { closeUp } from '../../src/report/drawings/motion/close-up.ts';
import { trackPlot } from '../../src/report/drawings/motion/track-plot.ts';
import { extremesOf, repeatPlot } from '../../src/report/drawings/repeat/repeat-plot.ts';
import { planOf } from '../../src/report/drawings/sketch/plan.ts';
import { stacked } from '../../src/report/drawings/stacked.ts';
import { homingTrack, wrongWayTrack } from './tracks.ts';
import { envelopeX, frame, repeat } from './watched.ts';
import { workshop } from './workshop.ts';

/** Corners of an SVG path as pairs of numbers, one list a stretch. */
const stretches = (path: string) =>
  path
    .split('M')
    .filter((piece) => piece !== '')
    .map((piece) => piece.split('L').map((corner) => corner.split(',').map(Number)));

describe('position over time', () => {
  it('draws every reported position to one scale, later to the right and more upward', () => {
    const corners = stretches(trackPlot(wrongWayTrack).path).flat();
    const { points } = wrongWayTrack;
    expect(corners).toHaveLength(points.length);
    const [first = [0, 0], last = [0, 0]] = [corners[0], corners.at(-1)];
    const at = (i: number) => points[i] ?? { t: 0, position: 0 };
    const [start, end] = [at(0), at(points.length - 1)];
    for (const [i, [x = 0, y = 0]] of corners.entries()) {
      const [inTime, inWay] = [at(i).t - start.t, at(i).position - start.position];
      expect((x - (first[0] ?? 0)) / ((last[0] ?? 0) - (first[0] ?? 0))).toBeCloseTo(
        inTime / (end.t - start.t),
        3,
      );
      expect((y - (first[1] ?? 0)) / ((last[1] ?? 0) - (first[1] ?? 0))).toBeCloseTo(
        inWay / (end.position - start.position),
        2,
      );
    }
    expect(last[1]).toBeGreaterThan(first[1] ?? 0);
  });

  it('joins nothing across missing reports or a new zero', () => {
    expect(stretches(trackPlot(wrongWayTrack).path)).toHaveLength(2);
    expect(stretches(trackPlot(homingTrack).path)).toHaveLength(2);
  });

  it('numbers what happened by the clock, and keeps the doubt of each moment as wide as it is', () => {
    const { marks } = trackPlot(homingTrack);
    expect(marks.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(marks.map(({ kind }) => kind)).toEqual([
      'trip',
      'reversal',
      'free',
      'reversal',
      'trip',
      'reversal',
      'free',
      'zero',
    ]);
    const [trip] = marks;
    const { box } = trackPlot(homingTrack);
    // 40 ms of 12.4 s.
    expect(((trip?.to ?? 0) - (trip?.from ?? 0)) / (box.right - box.left)).toBeCloseTo(40 / 12_400, 4);
  });

  it('draws larger where all of it happened in a small part of the way, at the same times', () => {
    const close = closeUp(homingTrack);
    expect(close?.trips).toEqual(homingTrack.trips);
    expect(close?.points.every((point) => homingTrack.points.includes(point))).toBe(true);
    expect(closeUp(wrongWayTrack)).toBeUndefined();
  });

  it('draws a motion of one report, and of none', () => {
    for (const points of [homingTrack.points.slice(0, 1), []])
      expect(JSON.stringify(trackPlot({ ...homingTrack, points }))).not.toMatch(/null|NaN/);
  });
});

describe('the envelope', () => {
  const place = { from: 0, to: 300, base: 100 };
  const xOf = (facts: EnvelopeFacts, kind: string) =>
    endPlot(facts, 'negative', place).items.find((item) => item.kind === kind)?.x ?? Number.NaN;

  it('is drawn to scale: hard stop, trip, home and soft limit as far apart as they are', () => {
    // −5, −1.2, 0 and 2: told by hand in the fixture.
    const [stop, trip, home, soft] = ['stop', 'trip', 'home', 'soft'].map((kind) => xOf(envelopeX, kind));
    const unit = ((soft ?? 0) - (stop ?? 0)) / 7;
    expect(((trip ?? 0) - (stop ?? 0)) / unit).toBeCloseTo(3.8, 2);
    expect(((home ?? 0) - (trip ?? 0)) / unit).toBeCloseTo(1.2, 2);
  });

  it('lays metal outside the hard stop, and the lengths that are needed inward or outward from the trip', () => {
    const plot = endPlot(envelopeX, 'negative', place);
    expect(plot.metal).toEqual({ from: 0, to: xOf(envelopeX, 'stop') });
    const [margin, backOff, room] = plot.spans.map(({ from, to }) => Math.sign(to - from));
    expect([margin, backOff, room]).toEqual([1, 1, -1]);
    const positive = endPlot(envelopeX, 'positive', place);
    expect(positive.spans.map(({ from, to }) => Math.sign(to - from))).toEqual([-1, 1]);
  });

  it('marks the part of a program that the soft limits do not hold', () => {
    const [part] = stripPlot(envelopeX, 0, 600).parts;
    // The program goes to 431, the soft limit stands at 425.5.
    const per = ((part?.to ?? 0) - (part?.from ?? 0)) / (431 - 58);
    expect(part?.outside).toHaveLength(1);
    expect(((part?.outside[0]?.to ?? 0) - (part?.outside[0]?.from ?? 0)) / per).toBeCloseTo(5.5, 1);
  });

  it('says so where nothing is known of an end', () => {
    const nothing = { ...envelopeX, ends: { negative: {}, positive: {} }, soft: undefined, homes: undefined };
    const plot = endPlot({ ...nothing, softMargin: mm(2) }, 'negative', place);
    expect(plot.items).toEqual([]);
    expect(JSON.stringify(stripPlot({ ...nothing, origins: [], parts: [] }, 0, 600))).not.toMatch(/null|NaN/);
  });

  it('lets no label cover another', () => {
    const labels = [10, 12, 14, 90, 95].map((x) => ({ x, width: 40 }));
    const placed = stacked(labels, { from: 0, to: 120 });
    for (const [i, one] of placed.entries())
      for (const other of placed.slice(i + 1))
        if (one.row === other.row) expect(Math.abs(one.x - other.x)).toBeGreaterThanOrEqual(40);
    for (const { x } of placed) expect(x >= 20 && x <= 100).toBe(true);
  });
});

describe('the coordinate sketch', () => {
  const axes = workshop.axes.map(({ letter, kind, motors, homes, positive }) => ({
    letter,
    kind,
    motors,
    ...(homes && { homes }),
    ...(positive && { positive }),
  }));

  it('puts the home corner where the axes home to: left, front and top on the workshop machine as declared', () => {
    expect(planOf({ axes, ways: [] }).home).toEqual(['left', 'front', 'top']);
  });

  it('moves the home corner and the arrow with an axis that really runs the other way', () => {
    const { home, arrows } = planOf({ axes, ways: frame.ways });
    expect(home).toEqual(['left', 'back', 'top']);
    expect(arrows).toContainEqual({ axis: 'Y', side: 'back', kind: 'declared' });
    expect(arrows).toContainEqual({ axis: 'Y', side: 'front', kind: 'really' });
    expect(arrows).toContainEqual({ axis: 'X', side: 'right', kind: 'seen' });
  });
});

it('draws each run of a repeatability as wide as its doubt, and the accepted span as wide as it is', () => {
  const plot = repeatPlot({ ...repeat, ...extremesOf(repeat) });
  const [run] = plot.runs;
  const band = plot.tolerance.bottom - plot.tolerance.top;
  // Each place is known to 0.027 mm, the span is 0.1 mm.
  expect(((run?.bottom ?? 0) - (run?.top ?? 0)) / band).toBeCloseTo(0.27, 2);
  expect(plot.runs.filter(({ outlier }) => outlier).map(({ number }) => number)).toEqual([8]);
});

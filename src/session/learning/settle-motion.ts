import type { Position } from '../../diagnose/learning/positions.ts';
import { linesToRead, readingOf } from '../../diagnose/learning/reading-of.ts';
import type { AxisLetter } from '../../model/machine.ts';
import type { ActivityBinding, AxisBinding } from '../../model/stream-description.ts';
import { labelOfField } from './asked-about.ts';
import { type Learning, type LearnScene, oneOf } from './steps.ts';

export interface BoundMotion {
  readonly axes: readonly { readonly letter: AxisLetter; readonly at: AxisBinding }[];
  readonly open: readonly AxisLetter[];
  readonly activity: ActivityBinding | undefined;
}

/** One position for each axis that was moved, and what shows that something moves. Machine or work coordinates is asked once for all axes. */
export function* settleMotion({ study }: LearnScene): Learning<BoundMotion> {
  const { axes, activity } = study.learned();
  const bound: BoundMotion['axes'][number][] = [];
  const open: AxisLetter[] = [];
  const tied: { letter: AxisLetter; positions: readonly Position[] }[] = [];
  for (const [letter, positions] of axes) {
    const [only, second] = positions;
    if (!only) open.push(letter);
    else if (second) tied.push({ letter, positions });
    else bound.push({ letter, at: bindingOf(only) });
  }
  const groups = tied.every(({ positions }) => positions.length === tied[0]?.positions.length)
    ? [tied]
    : tied.map((each) => [each]);
  for (const group of groups) {
    const [first] = group;
    if (!first) continue;
    const letters = group.map(({ letter }) => letter);
    const places = first.positions.map((_, i) => i);
    const labels = (i: number) =>
      group
        .flatMap(({ positions }) => positions[i] ?? [])
        .map(({ series }) => labelOfField(series.field, series.lines))
        .join(' ');
    const place = yield* oneOf(places, (_, left) => ({
      action: 'confirm',
      topic: 'which-position',
      axes: letters,
      shows: left.map(labels),
    }));
    for (const { letter, positions } of group) {
      const position = place === undefined ? undefined : positions[place];
      if (position) bound.push({ letter, at: bindingOf(position) });
      else open.push(letter);
    }
  }
  const order = [...axes.keys()];
  bound.sort((a, b) => order.indexOf(a.letter) - order.indexOf(b.letter));
  const doing = yield* oneActivity();
  return { axes: bound, open, activity: doing };

  function* oneActivity(): Learning<ActivityBinding | undefined> {
    const answers = activity.map((choice) => readingOf(choice, 16));
    const [only, second] = answers;
    const label = ({ series, away }: (typeof answers)[number]) =>
      `${labelOfField(series.field, series.lines)} "${away[0]}"`;
    const answer = second
      ? yield* oneOf(answers, (_, left) => ({
          action: 'confirm',
          topic: 'which-value',
          shows: left.map(label),
        }))
      : only;
    if (!answer) return undefined;
    const { series, part, rest, away } = answer;
    return {
      field: series.field,
      lines: linesToRead(answer),
      part,
      still: rest.slice(0, 1),
      moving: away,
      homing: [],
      fault: [],
    };
  }
}

const bindingOf = ({ series: { field, lines }, scale }: Position): AxisBinding => ({ field, lines, scale });

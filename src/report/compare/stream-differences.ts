import type { StreamFacts } from '../../model/session-facts.ts';
import { type Share, share } from '../../model/units.ts';
import { percentText, timeText } from '../../words/figures.ts';
import type { Difference } from './difference.ts';

/** Two runs of one stream differ by less: its own pace wavers, and the host hears it unevenly. Common practice, no source. */
const samePace = 0.1;
/** So large a share of lost or unreadable lines is a change; below it chance alone may decide. */
const notable = 0.001;

/** The pace of the reports and what went wrong with them, compared as far as chance does not explain it. */
export function streamDifferences(old: StreamFacts, now: StreamFacts): readonly Difference[] {
  const change = (what: string, before: string, after: string): Difference => ({
    topic: 'stream',
    subject: 'stream',
    what,
    old: before,
    new: after,
  });
  const figure = <Figure extends number>(
    what: string,
    before: Figure,
    after: Figure,
    text: (figure: Figure) => string,
  ): Difference => ({ ...change(what, text(before), text(after)), topic: 'stream', more: after > before });
  const named = old.inputs.join(' ') === now.inputs.join(' ') && old.axes.join(' ') === now.axes.join(' ');
  const shares = [
    ['lost reports', lostShare(old), lostShare(now)],
    ['unreadable lines', unreadableShare(old), unreadableShare(now)],
  ] as const;
  return [
    ...(named ? [] : [change('inputs and axes', namesOf(old), namesOf(now))]),
    ...(old.median === undefined ||
    now.median === undefined ||
    Math.abs(now.median / old.median - 1) <= samePace
      ? []
      : [figure('time between reports', old.median, now.median, timeText)]),
    ...shares
      .filter(([, before, after]) => Math.abs(after - before) > notable)
      .map(([what, before, after]) => figure(what, before, after, percentText)),
    ...(old.restarts === now.restarts
      ? []
      : [figure('controller restarts', old.restarts, now.restarts, String)]),
  ];
}

const namesOf = ({ inputs, axes }: StreamFacts): string => `${inputs.join(' ')}; ${axes.join('')}`;

const shareOf = (part: number, whole: number): Share => share(whole > 0 ? part / whole : 0);
const lostShare = ({ lost, reports }: StreamFacts): Share => shareOf(lost, lost + reports);
const unreadableShare = ({ unreadable, lines }: StreamFacts): Share =>
  shareOf(
    Object.values(unreadable).reduce((total, count) => total + count, 0),
    lines,
  );

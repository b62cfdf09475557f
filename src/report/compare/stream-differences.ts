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
  const figure = (what: string, before: string | undefined, after: string | undefined): Difference => ({
    topic: 'stream',
    subject: 'stream',
    what,
    old: before,
    new: after,
  });
  const named = old.inputs.join(' ') === now.inputs.join(' ') && old.axes.join(' ') === now.axes.join(' ');
  const shares = [
    ['lost reports', lostShare(old), lostShare(now)],
    ['unreadable lines', unreadableShare(old), unreadableShare(now)],
  ] as const;
  return [
    ...(named ? [] : [figure('inputs and axes', namesOf(old), namesOf(now))]),
    ...(old.median === undefined ||
    now.median === undefined ||
    Math.abs(now.median / old.median - 1) <= samePace
      ? []
      : [figure('time between reports', timeText(old.median), timeText(now.median))]),
    ...shares
      .filter(([, before, after]) => Math.abs(after - before) > notable)
      .map(([what, before, after]) => figure(what, percentText(before), percentText(after))),
    ...(old.restarts === now.restarts
      ? []
      : [figure('controller restarts', String(old.restarts), String(now.restarts))]),
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

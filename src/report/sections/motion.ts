import type { AxisTrack } from '../../model/motion-facts.ts';
import { secondsSpan } from '../../words/motion/lengths.ts';
import {
  eventPlace,
  eventsOf,
  eventText,
  expectedText,
  motionSentences,
  trackLabels,
} from '../../words/motion/track-words.ts';
import { type Block, type Table, text } from '../document.ts';
import { closeUp } from '../drawings/motion/close-up.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** Every motion that was watched, axis by axis: position over time, and beside it what happened when and where. */
export function motionBlocks({ verdicts }: ReportRecord): readonly Block[] {
  const tracks = factsIn(verdicts, 'tracks').flat();
  if (tracks.length === 0) return [text(motionSentences.none)];
  const axes = [...new Set(tracks.map(({ axis }) => axis))];
  return [
    text(motionSentences.commanded),
    text(motionSentences.key),
    ...axes.flatMap((axis) => groupsOf(tracks.filter((track) => track.axis === axis))),
  ];
}

function groupsOf(tracks: readonly AxisTrack[]): readonly Block[] {
  return tracks.map((track) => {
    const alike = tracks.filter(({ label }) => label === track.label);
    const nth = alike.length > 1 ? ` ${alike.indexOf(track) + 1}` : '';
    const events = eventTable(track);
    const close = closeUp(track);
    return {
      kind: 'group',
      heading: `${track.axis} axis: ${trackLabels[track.label].toLowerCase()}${nth}`,
      blocks: [
        {
          kind: 'pictures',
          pictures: [{ of: 'track', track }, ...(close ? [{ of: 'close-up' as const, track: close }] : [])],
        },
        ...(events.rows.length === 0 ? [] : [events]),
        text(expectedText(track)),
      ],
    };
  });
}

const eventTable = (track: AxisTrack): Table => ({
  kind: 'table',
  label: `What happened on ${track.axis}`,
  columns: [
    { head: 'No.', width: 6 },
    { head: 's', width: 16 },
    { head: `${track.axis}`, width: 24 },
    { head: 'What' },
  ],
  rows: eventsOf(track).map((event, i) => [
    `${i + 1}`,
    secondsSpan(event.t),
    eventPlace(event, track.unit),
    eventText(event),
  ]),
});

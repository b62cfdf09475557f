import type { Facts } from '../../model/verdict.ts';
import { counted } from '../figures.ts';
import { frameWords } from './frame-words.ts';
import { reactionWords, unseenText, zeroWords } from './homing-words.ts';
import { fineText, lengthText, spanText } from './lengths.ts';
import { definitionWords, repeatSays } from './repeat-words.ts';
import { scaleSays } from './scale-words.ts';
import { stoppingText } from './stopping-words.ts';
import { trackLabels } from './track-words.ts';

/** What the facts of a motion check say, as sentences; the sections of the record have every figure. */
export function motionSays(facts: Facts): readonly string[] {
  const { tracks = [], frame, homing, repeat, stopping, envelope, program, scale } = facts;
  return [
    ...tracksSay(tracks),
    ...(frame ? [frameWords[frame.says]] : []),
    ...(homing
      ? [
          `Not seen of the homing: ${unseenText(homing)}. Zero: ${zeroWords[homing.zero]}.`,
          `${sentence(reactionWords[homing.reaction])}.`,
        ]
      : []),
    ...(repeat
      ? [
          repeatSays[repeat.says](lengthText(repeat.tolerance, repeat.unit)),
          `${fineText(repeat.unidirectional, repeat.unit)} over ${counted(repeat.n, 'run')}: ${definitionWords[repeat.definition]}.`,
        ]
      : []),
    ...(stopping
      ? [
          stoppingText(stopping),
          ...(stopping.observed
            ? [`Ran on ${spanText(stopping.observed, stopping.unit)} after the trip.`]
            : []),
        ]
      : []),
    ...(envelope?.usable === undefined
      ? []
      : [`${lengthText(envelope.usable, envelope.unit)} are left to work in.`]),
    ...(program
      ? [
          `${counted(program.lines, 'line')}, of which ${program.notUnderstood.length} were not understood, or only in part.`,
        ]
      : []),
    ...(scale ? [`${scaleSays[scale.says]} Measured over commanded: ${scale.ratio.toFixed(5)}.`] : []),
  ];
}

function tracksSay(tracks: NonNullable<Facts['tracks']>): readonly string[] {
  if (tracks.length === 0) return [];
  const labels = [...new Set(tracks.map(({ label }) => label))].map((label) => {
    const count = tracks.filter((track) => track.label === label).length;
    return `${trackLabels[label].toLowerCase()}${count > 1 ? ` (${count} times)` : ''}`;
  });
  return [`Watched: ${labels.join(', ')}; drawn under Motion, axis by axis.`];
}

const sentence = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1);

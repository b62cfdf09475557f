import type { StreamRequest } from '../model/stream-description.ts';
import { escapeBytes, visible } from '../model/visible.ts';
import { listed } from './figures.ts';

/** Why something is not in a description, and what would put it there. */
export const notBoundWords = {
  'not-in-stream':
    'not in this stream: nothing in it changed when it was pressed. The controller must report the level or the active state of each input (firmware-notes); is a report setting off?',
  'not-learned':
    'not learned: something changed when it was pressed, and nothing followed its presses alone.',
  'not-pressed': 'not learned: it was not pressed while the stream was heard.',
  'too-few':
    'not learned: what followed its presses may be chance. Learn again, pressing each time when asked.',
  together: 'not learned: it changed only together with another input, and they do not share one.',
  tie: 'not learned: several values or ways of reading follow it equally well, and none was confirmed.',
  refused: 'not learned: it could not be pressed.',
} as const;

export const awaitingLines = (port: string): string =>
  `Listening on ${visible(port)}. Waiting for any line of text; how to read it is found out by asking you.`;

export const learnRemarks = {
  head: (machine: string, trials: number, tool: string): readonly string[] => [
    `How to read the status stream of: ${machine}. Written by tellwire learn (${tool}), by watching; change it by hand where you know better.`,
    `It rests on ${trials} trials: rest, presses and moves as asked. tellwire check <this file> --stream --capture capture.log shows what it reads.`,
    'A value is named by what stands before it: in.1 is the second value behind in, 0 the first bare column, g0.1 the second of the first bracket.',
    'What nobody has seen is not here: add the words for homing and fault to activity when you know them.',
  ],
  input: (trials: number, chance: number): string =>
    `followed its presses and nothing else of ${trials} trials; that anything did so by chance: ${chanceText(chance)}`,
  axis: (scale: number): string =>
    scale === 1
      ? 'followed the moves of this axis alone, in the unit it was moved in'
      : scale === 25.4
        ? 'followed the moves of this axis alone, in inches'
        : 'followed the moves of this axis alone; the scale is from the distance asked for, and no better than that move was',
  activity: 'left its rest with every move and with nothing else',
  notAccepted: 'NOT ACCEPTED: the preview was not confirmed. Look at every line before you use this.',
  stopped: 'STOPPED before the end: nothing is bound.',
} as const;

/** What the tool wrote to the port, which is said at the end of every session. */
export const writtenLine = (requests: number, request: StreamRequest | undefined): string =>
  request === undefined || requests === 0
    ? 'Nothing was written to the port.'
    : `Written to the port, ${requests} times: "${escapeBytes(request.send)}".`;

const chanceText = (chance: number): string => `less than 1 in ${Math.max(100, Math.floor(1 / chance))}`;

/** The end of learning, for a person: what is bound, what is not. */
export function learnSummary(
  bound: readonly string[],
  axes: readonly string[],
  open: readonly string[],
): readonly string[] {
  return [
    bound.length > 0 ? `Inputs bound: ${listed(bound)}.` : 'No input is bound.',
    axes.length > 0 ? `Axes bound: ${listed(axes)}.` : 'No axis is bound.',
    ...open,
  ];
}

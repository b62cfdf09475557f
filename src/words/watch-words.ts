import type { StreamFacts } from '../model/session-facts.ts';
import type { StreamRequest } from '../model/stream-description.ts';
import type { Millis } from '../model/units.ts';
import { escapeBytes } from '../model/visible.ts';
import { counted, timeText } from './figures.ts';

/** What a person who only watches is told. */
export const watchWords = {
  begins: (port: string, request: StreamRequest | undefined) =>
    `Watching ${port}. ${request ? `${asksEvery(request)} While something moves it is not written.` : 'Nothing is written to it.'} The tool cannot stop the machine and is no safety function.`,
  soakBegins: (time: Millis) =>
    `Hands off and nobody near for ${timeText(time)}: whatever an input does now, it does by itself.`,
  keys: (hasRequest: boolean) =>
    `m marks this moment, ${hasRequest ? 's says that nothing moves, ' : ''}q ends.`,
  lines: 'Type what you did and Enter to mark that moment; an empty line marks it too.',
  stillLines: 'After a move type still and Enter once nothing moves any more: until then nothing is written.',
  wasWritten: (times: number, { send }: StreamRequest) =>
    `Written to the port: ${escapeBytes(send)} ${counted(times, 'time')}.`,
  standsStill: 'Nothing moves, you say: the request is written again.',
  lost: (why: string) => `The stream broke off (${why}). Still listening.`,
  back: 'The stream is back.',
  mark: (number: number, at: Millis, said: string) =>
    `Mark ${number} at ${(at / 1000).toFixed(2)} s${said === '' ? '' : `: ${said}`}`,
} as const;

const asksEvery = ({ send, every }: StreamRequest): string =>
  `Written to it every ${every} ms: ${escapeBytes(send)}`;

/** How the stream comes in, in one line. */
export function streamStatement({ reports, median, longest, lost, gaps, unreadable }: StreamFacts): string {
  const wrong = Object.values(unreadable).reduce((total, count) => total + count, 0);
  const pace =
    median === undefined || longest === undefined
      ? ''
      : `, one every ${timeText(median)}, longest hole ${timeText(longest)}`;
  return `${counted(reports, 'report')}${pace}; ${lost} lost, ${counted(wrong, 'line')} unreadable, ${counted(gaps, 'interruption')}.`;
}

import type { Machine } from '../model/machine.ts';
import { ms } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';
import { noticeWords } from '../words/notice-words.ts';
import type { CommissionOptions } from './commission-options.ts';
import { Conduct } from './conduct.ts';
import { Listening } from './listening.ts';
import { endingLike, withOwnLine } from './own-line.ts';
import type { Recorder } from './recorder.ts';
import type { SavedSession } from './saved-session.ts';
import type { SessionClock } from './session-clock.ts';
import { Silence } from './silence.ts';
import type { StreamReader } from './stream-reader.ts';

const lookEvery = ms(1000);

export interface LiveParts {
  readonly clock: SessionClock;
  readonly reader: StreamReader;
  readonly recorder: Recorder;
  readonly machine: Machine;
  readonly course: SavedSession['course'];
  readonly saved: SavedSession | undefined;
}

/** Listens and asks until every check is through, the person stops, or no stream ever comes. */
export async function conductLive(
  { source, face: given, ownLine = false, learnCommand }: CommissionOptions,
  parts: LiveParts,
): Promise<readonly Verdict[]> {
  const { clock, reader, recorder, saved } = parts;
  const ending = endingLike(reader.description?.request?.send);
  return await new Promise<readonly Verdict[]>((resolve, reject) => {
    const writeOwn = (text: string, id: number): boolean => {
      const written = listening.writeOwn(text);
      if (written) recorder.note<'own-line'>({ kind: 'own-line', id, text }, clock.now());
      return written;
    };
    const face = ownLine ? withOwnLine(given, { ending, write: writeOwn }) : given;
    const silence = new Silence(clock.now());
    let wasLost = false;
    const notice = (topic: keyof typeof noticeWords, text: string) =>
      face.show({ kind: 'notice', topic, text });
    const conduct = new Conduct({
      ...parts,
      face,
      past: saved?.retraced,
      onOver: ({ verdicts }) => leave(verdicts),
    });
    const listening = new Listening(source, recorder, reader, clock, {
      heard: (readings, line) => {
        const isThere = readings.some((reading) => reading.kind === 'status');
        silence.heard(clock.now(), isThere, line);
        if (isThere && wasLost) notice('stream-back', noticeWords['stream-back'](source.port));
        if (isThere) wasLost = false;
        conduct.heard(readings);
      },
      opened: () => notice('awaiting-stream', noticeWords['awaiting-stream'](source.port)),
      lost: () => {
        wasLost = true;
        notice('stream-lost', noticeWords['stream-lost'](source.port));
      },
      sent: (text) => notice('written', noticeWords.written(text)),
    });
    let watching: (() => void) | undefined;
    const watch = () => {
      const news = silence.news(clock.now());
      if (news === 'nothing-heard') notice(news, noticeWords[news](source.port));
      if (news === 'nothing-understood')
        notice(
          news,
          noticeWords[news](source.port, {
            line: silence.example,
            isDescribed: reader.description !== undefined,
            learn: learnCommand,
          }),
        );
      if (silence.isOver(clock.now())) conduct.stop();
      else watching = clock.after(lookEvery, watch);
    };
    const leave = (verdicts: readonly Verdict[]) => {
      watching?.();
      listening.close().then(() => resolve(verdicts), reject);
    };
    face.start((reply) => {
      listening.answered();
      conduct.reply(reply);
    });
    if (parts.course.isOver) {
      conduct.stop();
      return;
    }
    watch();
    listening.open().catch(reject);
  });
}

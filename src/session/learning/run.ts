import type { Machine } from '../../model/machine.ts';
import type { Source, SourceEvent, Timekeeper } from '../../model/source.ts';
import type { StreamRequest } from '../../model/stream-description.ts';
import { ToolError } from '../../model/tool-error.ts';
import { ms } from '../../model/units.ts';
import { type CaptureEntry, encodeEntry } from '../../transport/capture.ts';
import { hearing } from '../../transport/hearing.ts';
import { lineSplitter } from '../../transport/line-splitter.ts';
import { longestLine } from '../../transport/stream/shapes/fields.ts';
import { awaitingLines } from '../../words/learn-words.ts';
import { noticeWords } from '../../words/notice-words.ts';
import type { Face } from '../operator.ts';
import { bytesOf, Requesting } from '../requesting.ts';
import { SessionClock } from '../session-clock.ts';
import { type LearnOutcome, learnCourse, nothingLearned } from './course.ts';
import { Study } from './study.ts';
import { LearnTalk } from './talk.ts';

export interface LearnOptions {
  readonly source: Source;
  readonly face: Face;
  readonly time: Timekeeper;
  readonly machine: Machine;
  /** Given and confirmed by the person; the tool makes up none. */
  readonly request: StreamRequest | undefined;
  /** Takes every line of the capture as it is heard. */
  readonly capture: (line: string) => void;
}

const endsAfter = 60_000;
const lookEvery = ms(1000);

/** Learns a stream to the end or until the person stops. Rejects with a ToolError where no line is ever heard. */
export function runLearning({
  source,
  face,
  time,
  machine,
  request,
  capture,
}: LearnOptions): Promise<LearnOutcome> {
  const clock = new SessionClock(time, ms(0));
  const study = new Study();
  const entriesOf = hearing(source.port, lineSplitter(longestLine));
  return new Promise((resolve, reject) => {
    let lastHeard = clock.now();
    let everHeard = false;
    const keep = (entry: CaptureEntry) => capture(encodeEntry(entry));
    const leave = (then: () => void) => {
      requesting.end();
      watching();
      source.close().then(then, reject);
    };
    const talk = new LearnTalk<LearnOutcome>({
      course: learnCourse({ machine, study }, request),
      study,
      machine,
      face,
      clock,
      onOver: (outcome) => leave(() => resolve(outcome ?? nothingLearned(machine, request))),
    });
    const requesting = new Requesting({
      request,
      isMoving: () => talk.isMoving,
      after: (delay, then) => clock.after(delay, then),
      write: (text) => {
        source.write(bytesOf(text));
        keep({ kind: 'tx', at: clock.now(), text });
      },
    });
    const take = (event: SourceEvent) => {
      for (const entry of entriesOf({ ...event, arrived: clock.of(event.arrived) })) {
        keep(entry);
        if (entry.kind !== 'rx') continue;
        lastHeard = clock.now();
        everHeard = true;
        talk.heard({ arrived: entry.at, text: entry.text, cut: entry.cut });
      }
      if (event.kind === 'opened') {
        face.show({
          kind: 'notice',
          topic: 'awaiting-stream',
          text: awaitingLines(source.port),
        });
        requesting.begin();
      } else if (event.kind === 'lost') {
        requesting.end();
        talk.gap();
        face.show({ kind: 'notice', topic: 'stream-lost', text: noticeWords['stream-lost'](source.port) });
      }
    };
    let watching: () => void = () => {};
    const watch = () => {
      if (clock.now() - lastHeard <= endsAfter || everHeard) watching = clock.after(lookEvery, watch);
      else leave(() => reject(nothingHeard(source.port, request !== undefined)));
    };
    face.start((reply) => {
      talk.reply(reply);
      // Of a stream that nobody can read yet only the person knows whether something moves.
      if (!talk.isMoving) requesting.standsStill();
    });
    watch();
    source.open(take).catch(reject);
  });
}

const nothingHeard = (port: string, asked: boolean) =>
  new ToolError(
    'nothing-heard',
    `No line was heard on ${port}.`,
    asked
      ? 'Is the request the right one, with the end of line the controller waits for?'
      : 'Is the controller on, the port and --baud right? If it reports only when asked, give what asks it with --request and --every.',
  );

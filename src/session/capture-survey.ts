import type { SessionFacts, StreamFacts } from '../model/session-facts.ts';
import type { StreamDescription } from '../model/stream-description.ts';
import { type Millis, ms } from '../model/units.ts';
import type { CaptureFile } from './capture-file.ts';
import { CaptureWalk } from './capture-walk.ts';
import { StreamReader } from './stream-reader.ts';
import { StreamStatistics } from './stream-statistics.ts';

/** What a whole capture holds, whatever was asked and judged meanwhile. Plain data: it may come from another thread. */
export interface CaptureSurvey {
  readonly stream: StreamFacts;
  /** Every input the stream ever declared. */
  readonly inputs: readonly string[];
  readonly sent: SessionFacts['sent'];
  /** Sound entries, the last moment they tell of, and the length in bytes up to which they are sound. */
  readonly lines: number;
  readonly lastAt: Millis;
  readonly length: number;
}

/** Goes through a capture once. `description` left out: the native sentences. */
export function surveyOf(capture: CaptureFile, description: StreamDescription | undefined): CaptureSurvey {
  const statistics = new StreamStatistics();
  const inputs = new Set<string>();
  const sent: { at: Millis; text: string }[] = [];
  const walk = new CaptureWalk(capture, new StreamReader(description), {
    passing: statistics,
    reading: (reading) => {
      statistics.take(reading);
      if (reading.kind === 'declared') for (const input of reading.inputs) inputs.add(input);
    },
    line: (line) => {
      if (line.kind === 'tx') sent.push({ at: line.at, text: line.text });
    },
  });
  walk.pass();
  return {
    stream: statistics.facts(walk.count),
    inputs: [...inputs],
    sent,
    lines: walk.count,
    lastAt: ms(walk.lastAt),
    length: capture.length,
  };
}

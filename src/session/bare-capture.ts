import { existsSync } from 'node:fs';
import type { Active, Level, Reading } from '../model/reading.ts';
import type { StreamFacts } from '../model/session-facts.ts';
import type { SignalEvent } from '../model/signal-event.ts';
import type { StreamDescription } from '../model/stream-description.ts';
import { ToolError } from '../model/tool-error.ts';
import type { Millis } from '../model/units.ts';
import { visible } from '../model/visible.ts';
import { CaptureFile } from './capture-file.ts';
import { CaptureWalk } from './capture-walk.ts';
import { SignalFollower, signalsIn } from './signals.ts';
import { StreamReader } from './stream-reader.ts';
import { StreamStatistics } from './stream-statistics.ts';

/** What one input did, as far as the stream told. */
export interface InputSeen {
  readonly input: string;
  readonly changes: number;
  /** Where it stood when the stream ended. */
  readonly level: Level;
  readonly active: Active;
}

/** A capture that belongs to no session: nobody was asked anything, so there is nothing to judge. */
export interface BareCapture {
  readonly stream: StreamFacts;
  readonly lasted: Millis;
  readonly inputs: readonly InputSeen[];
  /** How many pieces were written to the port beside what was heard. */
  readonly sent: number;
  /** Lines that were damaged after they were written. */
  readonly damaged: number;
  readonly signals: { readonly inputs: readonly string[]; readonly events: Iterable<SignalEvent> };
}

/** Reads one through. `description` left out: the native sentences. Throws ToolError `file-missing`, `session-damaged`. */
export function readBareCapture(path: string, description: StreamDescription | undefined): BareCapture {
  if (!existsSync(path))
    throw new ToolError(
      'file-missing',
      `There is no ${visible(path)}.`,
      'Name a capture, such as capture.log.',
    );
  const statistics = new StreamStatistics();
  const follower = new SignalFollower();
  const seen = new Map<string, { changes: number; level: Level; active: Active }>();
  let [sent, damaged] = [0, 0];
  const reading = (each: Reading) => {
    statistics.take(each);
    if (each.kind === 'declared')
      for (const input of each.inputs)
        if (!seen.has(input)) seen.set(input, { changes: -1, level: '?', active: '?' });
    for (const event of follower.take(each)) {
      const { changes = -1 } = (event.kind === 'change' && seen.get(event.input)) || {};
      if (event.kind === 'change')
        seen.set(event.input, { changes: changes + 1, level: event.level, active: event.active });
    }
  };
  const walk = new CaptureWalk(new CaptureFile(path), new StreamReader(description), {
    reading,
    line: ({ kind }) => {
      if (kind === 'tx') sent++;
      if (kind === 'damaged') damaged++;
    },
  });
  walk.take(Number.POSITIVE_INFINITY);
  if (damaged === walk.count)
    throw new ToolError(
      'session-damaged',
      `${visible(path)} is neither a session nor a capture.`,
      'Name a session folder, the file that report --bundle made of one, or a capture.',
    );
  return {
    stream: statistics.facts(walk.count),
    lasted: walk.lastAt as Millis,
    inputs: [...seen].map(([input, { changes, ...state }]) => ({
      input,
      changes: Math.max(0, changes),
      ...state,
    })),
    sent,
    damaged,
    signals: {
      inputs: [...seen.keys()],
      events: { [Symbol.iterator]: () => signalsIn(new CaptureFile(path), description) },
    },
  };
}

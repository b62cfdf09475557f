import { rulesVersion } from '../diagnose/checks/registry.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import type { SignalEvent } from '../model/signal-event.ts';
import type { SessionFolder } from './folder.ts';
import { judgeSaved, type SavedSession } from './saved-session.ts';
import { signalsIn } from './signals.ts';
import { streamOf } from './stream-file.ts';

export interface Replayed {
  readonly facts: SessionFacts;
  /** The session was judged by other rules when it was live. */
  readonly rulesChanged: boolean;
  /** The journal asks something else than the capture leads to: one of the two was changed. */
  readonly parted: boolean;
  readonly signals: {
    /** Every input the stream ever declared. */
    readonly inputs: readonly string[];
    /** What the inputs did, read anew from the capture, each time it is gone through. */
    readonly events: Iterable<SignalEvent>;
  };
}

/** What comes out of a session that was gone through again. */
export function replayedOf(folder: SessionFolder, saved: SavedSession): Replayed {
  return {
    facts: judgeSaved(saved),
    rulesChanged: saved.header.rules !== rulesVersion,
    parted: saved.retraced.parted !== undefined,
    signals: {
      inputs: saved.survey.inputs,
      events: { [Symbol.iterator]: () => signalsIn(folder.capture(), streamOf(folder)) },
    },
  };
}

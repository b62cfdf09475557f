import { rulesVersion } from '../diagnose/checks/registry.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import type { SignalEvent } from '../model/signal-event.ts';
import { SessionFolder } from './folder.ts';
import { judgeSaved, readSession } from './saved-session.ts';
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

/**
 * Judges a saved session again from its capture and journal; the verdicts written in the journal are not looked at.
 * `explained`: with what each fault may come from.
 */
export function replay(path: string, explained = true): Replayed {
  const folder = new SessionFolder(path);
  const saved = readSession(folder, explained);
  const facts = judgeSaved(saved);
  return {
    facts,
    rulesChanged: saved.header.rules !== rulesVersion,
    parted: saved.retraced.parted !== undefined,
    signals: {
      inputs: saved.inputs,
      events: { [Symbol.iterator]: () => signalsIn(folder.capture(), streamOf(folder)) },
    },
  };
}

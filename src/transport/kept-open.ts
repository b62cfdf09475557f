import type { Source, SourceEvent, Timekeeper } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { type Millis, ms } from '../model/units.ts';
import { toMicrosecond } from './capture.ts';

/** One opening of a port, until it is lost or closed. */
export interface Connection {
  write(bytes: Uint8Array): void;
  /** Resolves when what was written so far has been taken by the system, or cannot be any more. */
  flushed(): Promise<void>;
  close(): Promise<void>;
}

export interface ConnectionEvents {
  bytes(bytes: Uint8Array): void;
  /** Once, and not after `close`. */
  lost(why: string): void;
}

/** A source that says when the system has taken what was written. */
export interface KeptSource extends Source {
  flushed(): Promise<void>;
}

/** Opens the port once; rejects with a ToolError. */
export type Connect = (events: ConnectionEvents) => Promise<Connection>;

/** Time between two attempts to open a lost port again. */
const retryEvery = ms(500);

/**
 * A source that opens its port again by itself after a loss, until it is closed. The first opening rejects where it fails; later
 * ones are tried again in silence.
 */
export function keptOpen(port: string, time: Timekeeper, connect: Connect): KeptSource {
  let hear: ((event: SourceEvent) => void) | undefined;
  let current: Connection | undefined;
  let stopRetry: (() => void) | undefined;
  let state: 'new' | 'open' | 'closed' = 'new';

  const now = (): Millis => toMicrosecond(time.now());

  const attempt = async (): Promise<void> => {
    // Bytes may come before `connect` has said that the port is open: they are told after it.
    let early: Uint8Array[] | undefined = [];
    let lostEarly: string | undefined;
    const lose = (why: string) => {
      current = undefined;
      hear?.({ kind: 'lost', arrived: now(), why });
      if (state === 'open') retryLater();
    };
    const connection = await connect({
      bytes(bytes) {
        if (early !== undefined) early.push(bytes);
        else if (state === 'open') hear?.({ kind: 'bytes', arrived: now(), bytes });
      },
      lost(why) {
        if (early !== undefined) lostEarly = why;
        else if (state === 'open') lose(why);
      },
    });
    if (state === 'closed') return connection.close();
    current = connection;
    hear?.({ kind: 'opened', arrived: now() });
    const waiting = early;
    early = undefined;
    for (const bytes of waiting) hear?.({ kind: 'bytes', arrived: now(), bytes });
    if (lostEarly !== undefined) lose(lostEarly);
  };

  const retryLater = () => {
    stopRetry = time.after(retryEvery, () => {
      attempt().catch((cause: unknown) => {
        if (!(cause instanceof ToolError)) throw cause;
        if (state === 'open') retryLater();
      });
    });
  };

  return {
    port,
    async open(listener) {
      if (state !== 'new')
        throw new ToolError('internal', `${port} was opened twice.`, 'Open a new source instead.');
      state = 'open';
      hear = listener;
      try {
        await attempt();
      } catch (cause) {
        state = 'closed';
        throw cause;
      }
    },
    write(bytes) {
      if (current === undefined)
        throw new ToolError(
          'port-failed',
          `${port} is not open, so nothing can be written to it.`,
          'Wait until it is back.',
        );
      current.write(bytes);
    },
    flushed: () => current?.flushed() ?? Promise.resolve(),
    async close() {
      state = 'closed';
      stopRetry?.();
      const closing = current;
      current = undefined;
      await closing?.close();
    },
  };
}

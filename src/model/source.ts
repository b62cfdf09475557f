import type { Millis } from './units.ts';

/** What a port hands over, each with its arrival time on the session's monotonic clock. */
export type SourceEvent =
  | { readonly kind: 'opened'; readonly arrived: Millis }
  | { readonly kind: 'bytes'; readonly arrived: Millis; readonly bytes: Uint8Array }
  /** The port went away; the source keeps trying and says `opened` when it is back. */
  | { readonly kind: 'lost'; readonly arrived: Millis; readonly why: string };

/** Where status bytes come from: a serial device, a tcp peer, the bench. The first opening rejects with a ToolError; later losses are events. */
export interface Source {
  /** As the person named it: a device path, `tcp://host:port`, `bench`. */
  readonly port: string;
  open(listener: (event: SourceEvent) => void): Promise<void>;
  /** Only what law 1 of the house allows passes here; the session decides, records and states it. */
  write(bytes: Uint8Array): void;
  close(): Promise<void>;
}

/** Time as the session knows it: real, or the bench's virtual time in which a minute costs nothing. */
export interface Timekeeper {
  /** ms on a monotonic clock. */
  now(): Millis;
  /** Calls `then` once, `delay` from now; the returned function takes it back. */
  after(delay: Millis, then: () => void): () => void;
}

export type Topic = 'asked' | 'wiring' | 'rest' | 'verdict' | 'stream';

/** One thing that is not as it was. What is absent was not known, or not there. */
export interface Difference {
  readonly topic: Topic;
  /** A switch or an input; `stream`, `session`. */
  readonly subject: string;
  /** Which field, check or figure. */
  readonly what: string;
  readonly old: string | undefined;
  readonly new: string | undefined;
}

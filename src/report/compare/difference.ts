import type { CheckName } from '../../model/verdict.ts';

export type Topic = 'asked' | 'wiring' | 'rest' | 'verdict' | 'stream';

interface Change {
  /** A switch or an input; `stream`, `session`. */
  readonly subject: string;
  /** Which field, check or figure. */
  readonly what: string;
  readonly old: string | undefined;
  readonly new: string | undefined;
}

export interface VerdictChange extends Change {
  readonly topic: 'verdict';
  readonly check: CheckName;
  readonly part: 'status' | 'findings';
}

interface StreamChange extends Change {
  readonly topic: 'stream';
  /** Whether a figure is larger than it was; absent where it is no figure. */
  readonly more?: boolean;
}

/** One thing that is not as it was. What is absent was not known, or not there. */
export type Difference =
  | (Change & { readonly topic: Exclude<Topic, 'verdict' | 'stream'> })
  | VerdictChange
  | StreamChange;

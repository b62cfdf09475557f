/** Everything that is said about one thing that can be wrong. */
export interface FaultEntry {
  readonly title: string;
  /** One sentence: what has happened. */
  readonly what: string;
  /** What the person changes; the tool changes nothing. */
  readonly fix: string;
  /** What to look at where no meter proves it. */
  readonly look?: string;
}

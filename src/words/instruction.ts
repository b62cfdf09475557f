/** What a person is told for one ask. `short` is the line to be read at two metres, at most 60 characters. */
export interface AskWords {
  readonly text: string;
  readonly cautions: readonly string[];
  readonly short: string;
}

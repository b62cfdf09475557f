/** One thing wrong with a file: where, what stands there, what may stand there, what to do. Lines and columns count from 1. */
export interface FileProblem {
  readonly line: number;
  readonly column: number;
  /** As in `inputs.x-home.duty[1]`; empty for the file as a whole. */
  readonly path: string;
  /** Text of the file as it stands: unescaped, cut to a readable length. Escape it before it is shown. */
  readonly found: string;
  readonly allowed: string;
  readonly tryNext: string;
}

export type Path = readonly (string | number)[];

/** What a finder of problems says; the place in the text is looked up from the path or from the offset. */
export interface Wrong {
  readonly path: Path;
  /** Where in the text, where the path alone would not lead to the right spot. */
  readonly offset?: number;
  readonly found: string;
  readonly allowed: string;
  readonly tryNext: string;
}

export const pathText = (path: Path): string =>
  path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text === '' ? part : `${text}.${part}`),
    '',
  );

const longest = 80;

/** Text of the file, cut so that one hostile line cannot fill a screen. */
export const cutShort = (text: string): string =>
  text.length > longest ? `${text.slice(0, longest)}... (${text.length} characters)` : text;

export const quoted = (text: string): string => `"${cutShort(text)}"`;

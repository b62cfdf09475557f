import { StringDecoder } from 'node:string_decoder';

/** Longer lines than this are no answer; they are cut here so that no input can fill the memory. Characters. */
const longestLine = 4096;

export interface TypedLine {
  readonly text: string;
  /** The line went on past the longest that is kept. */
  readonly cut: boolean;
}

/**
 * Lines a person or a program types, with CR LF or LF; the last needs no end. `gone` comes once, when no more can come.
 * Returns a function that stops listening and lets the process end.
 */
export function typedLines(
  input: NodeJS.ReadableStream,
  take: (line: TypedLine) => void,
  gone: () => void,
): () => void {
  const decoder = new StringDecoder('utf8');
  let kept = '';
  let cut = false;
  let over = false;
  const hand = () => {
    const line = { text: kept.endsWith('\r') ? kept.slice(0, -1) : kept, cut };
    kept = '';
    cut = false;
    take(line);
  };
  const data = (chunk: Buffer | string) => {
    const parts = (typeof chunk === 'string' ? chunk : decoder.write(chunk)).split('\n');
    parts.forEach((part, i) => {
      if (kept.length + part.length > longestLine) cut = true;
      kept = (kept + part).slice(0, longestLine);
      if (i < parts.length - 1) hand();
    });
  };
  const end = () => {
    if (over) return;
    over = true;
    if (kept !== '') hand();
    gone();
  };
  const listeners = [
    ['data', data],
    ['end', end],
    ['close', end],
    ['error', end],
  ] as const;
  for (const [name, listener] of listeners) input.on(name, listener);
  return () => {
    over = true;
    for (const [name, listener] of listeners) input.removeListener(name, listener);
    input.on('error', () => {});
    input.pause();
    if ('unref' in input && typeof input.unref === 'function') input.unref();
  };
}

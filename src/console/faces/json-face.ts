import { visible } from '../../model/visible.ts';
import type { Face, FaceEvent, Reply } from '../../session/operator.ts';
import { type JsonLine, jsonEvent } from './json-events.ts';
import { type TypedLine, typedLines } from './typed-lines.ts';
import { writerTo } from './writer.ts';

/** How much of a wrong line is quoted back. */
const quoted = 200;

/** The operator as a program: one JSON object a line in both directions, nothing else on the output. */
export class JsonFace implements Face {
  private readonly input: NodeJS.ReadableStream;
  private readonly write: (text: string) => void;
  private take: (reply: Reply) => void = () => {};
  private stop = () => {};

  constructor(input: NodeJS.ReadableStream, output: NodeJS.WritableStream) {
    this.input = input;
    this.write = writerTo(output, () => this.take({ kind: 'gone' }));
  }

  start(take: (reply: Reply) => void): void {
    this.take = take;
    this.stop = typedLines(
      this.input,
      (line) => take(replyFrom(line)),
      () => take({ kind: 'gone' }),
    );
  }

  show(event: FaceEvent): void {
    const line = jsonEvent(event);
    if (line) this.write(`${asText(line)}\n`);
  }

  close(): void {
    this.stop();
    this.take = () => {};
  }
}

/** JSON keeps C1 controls and direction marks as they are; a terminal that shows the line must not act on them. */
const asText = (line: JsonLine): string =>
  JSON.stringify(line).replace(
    /[\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** An answer, or what was found in its place. Never throws. */
export function replyFrom({ text, cut }: TypedLine): Reply {
  const wrong = (): Reply => ({ kind: 'wrong', found: visible(text.slice(0, quoted)) });
  if (cut) return wrong();
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return wrong();
  }
  if (typeof parsed !== 'object' || parsed === null) return wrong();
  const { id, answer, value } = parsed as { id?: unknown; answer?: unknown; value?: unknown };
  if (!Number.isSafeInteger(id) || typeof answer !== 'string') return wrong();
  if (value !== undefined && !(typeof value === 'number' && Number.isFinite(value))) return wrong();
  return {
    kind: 'answer',
    id: id as number,
    answer: visible(answer.slice(0, quoted)),
    ...(typeof value === 'number' && { value }),
  };
}

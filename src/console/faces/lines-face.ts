import type { Machine } from '../../model/machine.ts';
import { visible } from '../../model/visible.ts';
import type { Face, FaceEvent, Reply, ShownAsk } from '../../session/operator.ts';
import { longestOwnLine } from '../../session/own-line.ts';
import { ownLineWords } from '../../words/own-line-words.ts';
import { answerOfLine } from './answer-keys.ts';
import { answerLines, linesFor } from './lines-text.ts';
import { NotReached } from './not-reached.ts';
import { OwnLinePrompt, ownLineWord } from './own-line-prompt.ts';
import { type TypedLine, typedLines } from './typed-lines.ts';
import { typedNumber } from './typed-number.ts';
import { writerTo } from './writer.ts';

/** A press is two changes; with a little bounce, six. */
const mostTold = 6;

export interface LinesFaceParts {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
  readonly machine: Machine;
  /** Ring the terminal's bell the moment an input answers an ask. */
  readonly bell: boolean;
}

/** Plain text, top to bottom, one instruction at a time; no drawing, no colour, no cursor moves. Answers are typed lines. */
export class LinesFace implements Face {
  private readonly parts: LinesFaceParts;
  private readonly write: (text: string) => void;
  private take: (reply: Reply) => void = () => {};
  private stop = () => {};
  private open: ShownAsk | undefined;
  private readonly ownLine = new OwnLinePrompt();
  private readonly notReached = new NotReached();
  /** Changes told of each input since the last ask. */
  private readonly told = new Map<string, number>();

  constructor(parts: LinesFaceParts) {
    this.parts = parts;
    this.write = writerTo(parts.output, () => this.take({ kind: 'gone' }));
  }

  start(take: (reply: Reply) => void): void {
    this.take = take;
    this.stop = typedLines(
      this.parts.input,
      (line) => this.answered(line),
      () => take({ kind: 'gone' }),
    );
  }

  show(event: FaceEvent): void {
    this.ownLine.follow(event);
    if (event.kind === 'verdict' && this.notReached.take(event.verdict)) return;
    if (event.kind !== 'verdict') this.say(this.notReached.told());
    if (event.kind === 'ask') {
      this.open = event;
      this.told.clear();
    }
    const during = this.open && { ask: this.open.ask, moved: [...this.told.keys()] };
    if (event.kind === 'ended' && event.id === this.open?.id) this.open = undefined;
    if (event.kind === 'heard' && this.isTooMuch(event.input)) return;
    const isFirst = event.kind === 'heard' && this.told.get(event.input) === 1;
    const rings = event.kind === 'danger' || (isFirst && this.open !== undefined);
    const bell = rings && this.parts.bell ? '\x07' : '';
    this.say(linesFor(event, this.parts.machine, during), bell);
  }

  close(): void {
    this.say(this.notReached.told());
    this.stop();
    this.take = () => {};
  }

  private answered({ text, cut }: TypedLine): void {
    const said = text.trim();
    if (this.ownLine.isOpen) {
      const reply = this.ownLine.entered(text);
      if (reply) this.take(reply);
      else this.say([ownLineWords.dropped]);
      return;
    }
    if (said.toLowerCase() === ownLineWord && this.ownLine.open(this.open)) {
      this.say([ownLineWords.title, ...ownLineWords.cautions, ownLineWords.prompt(longestOwnLine)]);
      return;
    }
    if (!this.open) {
      if (said !== '') this.say(['Nothing is asked just now.']);
      return;
    }
    if (said === '?' || said.toLowerCase() === 'help') {
      this.say(answerLines(this.open));
      return;
    }
    const value = this.open.answers.includes('value') && !cut ? typedNumber(said) : undefined;
    if (value !== undefined) {
      this.take({ kind: 'answer', id: this.open.id, answer: 'value', value });
      return;
    }
    const answer = cut ? undefined : answerOfLine(said, this.open.answers);
    this.take(
      answer === undefined
        ? { kind: 'wrong', found: visible(said.slice(0, 80)) }
        : { kind: 'answer', id: this.open.id, answer },
    );
  }

  /** An input that flickers would drown the one line that matters. */
  private isTooMuch(input: string): boolean {
    const before = this.told.get(input) ?? 0;
    this.told.set(input, before + 1);
    if (before === mostTold) this.say([`${input} keeps changing; no more of it is told until the next ask.`]);
    return before >= mostTold;
  }

  private say(lines: readonly string[], before = ''): void {
    if (lines.length > 0) this.write(`${before}${lines.map(visible).join('\n')}\n`);
  }
}

import type { PlugEnd } from '../model/ask.ts';
import { cellsOf } from './painting/cells.ts';
import type { Canvas, Row } from './painting/row.ts';
import type { SidePanel } from './screen.ts';

/** What a person can do at the bench, and see there. */
export interface BenchHands {
  readonly switches: readonly string[];
  press(subject: string): void;
  release(subject: string): void;
  setPlug(subject: string, at: PlugEnd, out: boolean): void;
  setMotorPower(on: boolean): void;
  clear(): void;
  inHand(subject: string): boolean;
  isOut(subject: string, at: PlugEnd): boolean;
  hasMotorPower(): boolean;
}

/** How long a tapped switch stays pressed: a terminal tells when a key goes down, never when it comes up. ms. */
const tap = 1000;

type Mode = 'press' | 'hold' | PlugEnd;
const modeKeys: Readonly<Record<string, Mode>> = { h: 'hold', o: 'switch', O: 'controller' };
const modeWords = {
  hold: 'which one to hold, or to let go?  Esc none',
  switch: 'whose plug at the switch, out or in?  Esc none',
  controller: 'whose plug at the controller, out or in?  Esc none',
} satisfies Record<Exclude<Mode, 'press'>, string>;

/** The keyboard as hands at the bench: a digit a switch. None of its keys is an answer. */
export class HandsPanel implements SidePanel {
  private readonly hands: BenchHands;
  private mode: Mode = 'press';

  constructor(hands: BenchHands) {
    this.hands = hands;
  }

  key(name: string): boolean {
    const mode = modeKeys[name];
    if (name === 'escape' && this.mode !== 'press') this.mode = 'press';
    else if (mode) this.mode = this.mode === mode ? 'press' : mode;
    else if (name === 'v') this.hands.setMotorPower(!this.hands.hasMotorPower());
    else if (name === 'w') this.hands.clear();
    else return this.digit(name);
    return true;
  }

  private digit(name: string): boolean {
    const subject = /^\d$/.test(name) ? this.hands.switches[(Number(name) + 9) % 10] : undefined;
    if (subject === undefined) return false;
    const { mode, hands } = this;
    this.mode = 'press';
    if (mode === 'switch' || mode === 'controller') hands.setPlug(subject, mode, !hands.isOut(subject, mode));
    else if (hands.inHand(subject)) hands.release(subject);
    else {
      hands.press(subject);
      if (mode === 'press') setTimeout(() => hands.release(subject), tap).unref();
    }
    return true;
  }

  rows({ width }: Canvas): readonly Row[] {
    const { hands, mode } = this;
    const power = `motors ${hands.hasMotorPower() ? 'ON' : 'off'}`;
    const keys = ['h hold', 'o unplug', 'O at controller', `v ${power}`, 'w clear halt'];
    const choices: Row =
      mode === 'press'
        ? keys.map((text) => ({ text: ` ${text} `, tone: 'plain' }))
        : [{ text: ` ${modeWords[mode]} `, tone: 'marked' }];
    const head: Row = [{ text: ' Your hands:', tone: 'strong' }, ...choices];
    const parts = hands.switches.slice(0, 10).map((each, i) => ({
      text: ` ${(i + 1) % 10} ${each}${this.stateOf(each)} `,
      tone: this.stateOf(each) === '' ? ('plain' as const) : ('strong' as const),
    }));
    return [...inRows(head, width), ...inRows(parts, width)];
  }

  private stateOf(subject: string): string {
    const { hands } = this;
    const words = [
      hands.inHand(subject) ? 'PRESSED' : '',
      hands.isOut(subject, 'switch') ? 'OUT' : '',
      hands.isOut(subject, 'controller') ? 'OUT at controller' : '',
    ].filter(Boolean);
    return words.length === 0 ? '' : ` (${words.join(', ')})`;
  }
}

function inRows(parts: Row, width: number): readonly Row[] {
  const rows: Row[] = [];
  for (const part of parts) {
    const last = rows.at(-1);
    const taken = last?.reduce((sum, { text }) => sum + cellsOf(text), 0) ?? width;
    if (last && taken + cellsOf(part.text) <= width) rows[rows.length - 1] = [...last, part];
    else rows.push([part]);
  }
  return rows;
}

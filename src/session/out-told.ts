import { type Ask, subjectOf } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import type { OutItem } from '../model/session-facts.ts';
import { noticeWords } from '../words/notice-words.ts';
import type { Face } from './operator.ts';

/** Keeps the person told of what hangs unplugged. While its own row is at work a plug is out by intent, and nothing is said. */
export class OutTold {
  private readonly face: Face;
  private readonly machine: Machine;
  private told = '';

  constructor(face: Face, machine: Machine) {
    this.face = face;
    this.machine = machine;
  }

  /** Says it where it changed since it was last said; `ask` is the one about to be put, undefined at the end. */
  tell(register: readonly OutItem[], ask: Ask | undefined): void {
    const isByIntent = ask?.check === 'open-wire' || ask?.check === 'troubleshoot';
    const row = ask && isByIntent ? subjectOf(ask) : undefined;
    const out = register.filter(({ subject }) => subject !== row);
    const now = JSON.stringify(out);
    if (now === this.told || (this.told === '' && out.length === 0)) return;
    this.told = out.length === 0 ? '' : now;
    const text = noticeWords['something-out'](out, this.machine);
    this.face.show({ kind: 'notice', topic: 'something-out', text });
  }
}

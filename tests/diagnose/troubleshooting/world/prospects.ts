import type { Inquiry } from '../../../../src/diagnose/troubleshooting/inquiry.ts';
import { type Prospect, prospectOf, type Trial } from '../../../../src/diagnose/troubleshooting/prospect.ts';
import type { Machine } from './machine.ts';
import type { Guide } from './search.ts';

const known = new Map<string, Prospect>();

/** What the troubleshooter is told before it begins: the wiring, new or worked, what the stream tells, what stands at the other end. */
export function prospectFor({ wiring, history, around }: Machine): Prospect {
  const key = [wiring.circuit.name, history, around.told, around.otherEnd].join();
  const prospect = known.get(key) ?? prospectOf(wiring, history, around);
  known.set(key, prospect);
  return prospect;
}

const decided = new Map<Prospect, Map<string, Trial | undefined>>();

/** The troubleshooter's own choice, thought over once for the same answers to the same deeds. */
export const chosen: Guide = (inquiry: Inquiry) => {
  const choices = decided.get(inquiry.prospect) ?? new Map<string, Trial | undefined>();
  decided.set(inquiry.prospect, choices);
  const learnt = inquiry.findings.map(({ deed, outcome }) => `${deed}=${outcome}`).sort();
  const key = [...learnt, ...inquiry.left.map(({ name }) => name)].join();
  if (!choices.has(key)) choices.set(key, inquiry.next()?.test);
  return choices.get(key);
};

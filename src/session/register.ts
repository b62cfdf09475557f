import { takesAlong } from '../diagnose/procedures/takes-along.ts';
import type { Ask, AskEnd } from '../model/ask.ts';
import { allSwitches, type Machine, type Subject } from '../model/machine.ts';
import type { OutItem } from '../model/session-facts.ts';

/** What is unplugged right now, as the asks and their answers tell. An unplug broken off by the stream counts as out until put back. */
export function registerAfter(register: readonly OutItem[], ask: Ask, end: AskEnd): readonly OutItem[] {
  const done = end.answer === 'done';
  if (ask.action === 'unplug' && (done || end.by === 'gap')) {
    return [...without(register, ask), { subject: ask.subject, at: ask.at }];
  }
  if (ask.action === 'replug' && done) return without(register, ask);
  if (ask.action === 'jumper' && (done || end.by === 'gap'))
    return [...without(register, ask), { subject: ask.subject, at: ask.at, linked: ask.terminals }];
  if (ask.action === 'unjumper' && done) return without(register, ask);
  if (ask.action === 'confirm' && ask.topic === 'still-out' && end.answer === 'no' && ask.subject) {
    return without(register, { subject: ask.subject, action: ask.linked ? 'jumper' : 'unplug' });
  }
  return register;
}

/** A plug and a link of one subject are told apart: a link is put in while the plug is out. */
function without(
  register: readonly OutItem[],
  { subject, action }: { readonly subject: Subject; readonly action: string },
): readonly OutItem[] {
  const isLink = action === 'jumper' || action === 'unjumper';
  return register.filter((each) => each.subject !== subject || (each.linked !== undefined) !== isLink);
}

/** Every subject an open plug takes with it: its own input's, and at the controller all inputs of the connector. */
export const subjectsOut = (register: readonly OutItem[], machine: Machine): readonly Subject[] =>
  register.flatMap((each) => [
    each.subject,
    ...allSwitches(machine)
      .filter((one) => takesAlong(each, one, machine))
      .flatMap(({ input, subject }) => [input, subject]),
  ]);

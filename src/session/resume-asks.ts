import { type Ask, type AskEnd, handsOnTopics } from '../model/ask.ts';
import { type Machine, verticalAxes } from '../model/machine.ts';
import { seconds } from '../model/units.ts';
import type { Course } from './course.ts';

const timeToAnswer = seconds(60);
const timeToSwitch = seconds(120);

/**
 * What is asked before a resumed session goes on: days may have passed. First what is still unplugged; then, where hands are about
 * to go to the switches, motor power and the prop once more; where the drives are on, that everyone is clear.
 */
export function resumeAsks({ register, pending }: Course, machine: Machine): readonly Ask[] {
  const out = register.map((each): Ask => {
    return { check: 'resume', action: 'confirm', topic: 'still-out', ...each, seconds: timeToAnswer };
  });
  return [...out, ...(pending ? conditionsOf(pending, machine) : [])];
}

function conditionsOf(pending: Ask, machine: Machine): readonly Ask[] {
  const isCondition =
    pending.action === 'power' ||
    (pending.action === 'confirm' &&
      pending.topic !== 'signal-plug' &&
      !handsOnTopics.includes(pending.topic));
  if (pending.action === 'hands-off' || isCondition) return [];
  if (pending.check === 'stop') {
    return 'subject' in pending && pending.subject !== undefined
      ? [
          {
            check: 'resume',
            action: 'confirm',
            topic: 'stop-area-clear',
            subject: pending.subject,
            seconds: timeToAnswer,
          },
        ]
      : [];
  }
  const axes = verticalAxes(machine);
  const off: Ask = { check: 'resume', action: 'power', what: 'motors', to: 'off', seconds: timeToSwitch };
  const propped: Ask = { check: 'resume', action: 'confirm', topic: 'propped', axes, seconds: timeToAnswer };
  return axes.length > 0 ? [off, propped] : [off];
}

/** The work does not go on without this answer. */
export const isRefusedCondition = (ask: Ask, { answer }: AskEnd): boolean =>
  ask.check === 'resume' &&
  !(ask.action === 'confirm' && ask.topic === 'still-out') &&
  answer !== 'done' &&
  answer !== 'yes';

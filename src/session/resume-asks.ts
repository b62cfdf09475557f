import { type Ask, type AskEnd, type AskedFor, handsOnTopics } from '../model/ask.ts';
import { type Machine, verticalAxes } from '../model/machine.ts';
import { seconds } from '../model/units.ts';
import type { Course } from './course.ts';

const timeToAnswer = seconds(60);
const timeToSwitch = seconds(120);

/**
 * What is asked before a resumed session goes on: days may have passed. First what is still unplugged; then, where hands are about
 * to go to the switches, motor power and the prop once more; where the drives are on, that everyone is clear; where an axis is about to move, that props are out, power
 * is on and its way is free.
 */
export function resumeAsks({ register, pending }: Course, machine: Machine): readonly Ask[] {
  const out = register.map((each): Ask => {
    return { check: 'resume', action: 'confirm', topic: 'still-out', ...each, seconds: timeToAnswer };
  });
  return [...out, ...(pending ? conditionsOf(pending, machine) : [])];
}

function conditionsOf(pending: Ask, machine: Machine): readonly Ask[] {
  if (isMoving(pending.check)) return beforeMotion(pending, machine);
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

/** Checks in which axes move; the others that judge axes only ask for numbers. */
const moving: readonly AskedFor[] = ['seek', 'homing', 'repeat', 'scale'];
const isMoving = (check: AskedFor): boolean => moving.includes(check);

function beforeMotion(pending: Ask, machine: Machine): readonly Ask[] {
  const isPower = pending.action === 'power';
  const isStop = pending.action === 'confirm' && pending.topic === 'hard-wired-stop';
  if (isPower || isStop) return [];
  const on: Ask = { check: 'resume', action: 'power', what: 'motors', to: 'on', seconds: timeToSwitch };
  const isWay = pending.action === 'confirm' && pending.topic === 'way-free';
  const axis = 'axis' in pending ? pending.axis : undefined;
  const axes = axis === 'all' ? machine.axes.map(({ letter }) => letter) : axis ? [axis] : [];
  const ways = (isWay ? [] : axes).map(
    (each): Ask => ({
      check: 'resume',
      action: 'confirm',
      topic: 'way-free',
      axis: each,
      seconds: timeToAnswer,
    }),
  );
  return [on, ...ways];
}

/** The work does not go on without this answer. */
export const isRefusedCondition = (ask: Ask, { answer }: AskEnd): boolean =>
  ask.check === 'resume' &&
  !(ask.action === 'confirm' && ask.topic === 'still-out') &&
  answer !== 'done' &&
  answer !== 'yes';

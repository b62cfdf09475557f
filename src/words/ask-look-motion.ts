import type { Ask, MotionTopic } from '../model/ask.ts';
import type { Machine, Side } from '../model/machine.ts';
import { visible } from '../model/visible.ts';
import { cautions } from './cautions.ts';
import type { AskWords } from './instruction.ts';

type LookAtMotion = Extract<Ask, { readonly action: 'look'; readonly topic: MotionTopic }>;

const toThe = {
  left: 'to the left',
  right: 'to the right',
  front: 'to the front',
  back: 'to the back',
  top: 'up',
  bottom: 'down',
} satisfies Record<Side, string>;

/** As ISO 841 names the axes of a vertical machine, seen from the front. */
const usualSide: Readonly<Record<string, Side>> = { X: 'right', Y: 'back', Z: 'top' };

function positiveSide(axis: string, machine: Machine): string {
  const found = machine.axes.find(({ letter }) => letter === axis);
  if (found?.kind === 'rotary')
    return 'positive is the way a right-hand screw turns that advances along the axis';
  const side = found?.positive ?? usualSide[axis];
  if (side === undefined) return 'positive is the way the axis counts up';
  const from = machine.stand === undefined ? 'where the work is loaded' : visible(machine.stand);
  const seen = side === 'top' || side === 'bottom' ? '' : `, seen from where you stand (${from})`;
  return `positive is ${toThe[side]}${found?.positive === undefined ? ', by ISO 841' : ''}${seen}`;
}

const looks = {
  direction: (axis, machine) => ({
    text: `Which way did the tool go over the work along ${axis}: ${positiveSide(axis, machine)}? Where the table moves, the tool goes the other way over the work. Answer positive, negative or none.`,
    cautions: cautions('listens', 'stayClear'),
    short: `Which way did the tool go, ${axis}?`,
  }),
  reached: (axis) => ({
    text: `Did ${axis} come to its home switch, so that the dog operated it? Look, do not reach. Answer yes or no.`,
    cautions: cautions('stayClear', 'fingers'),
    short: `Did ${axis} reach its switch?`,
  }),
  buzzed: (axis) => ({
    text: `Did the motor of ${axis} buzz, whine or knock without turning? Answer yes or no.`,
    cautions: cautions('stayClear', 'leaveIt'),
    short: `Did the motor of ${axis} buzz?`,
  }),
  'came-back': (axis) => ({
    text: `After ${axis} had come to its switch: did it really come back off it? Look at the gap. Answer yes or no.`,
    cautions: cautions('stayClear', 'fingers'),
    short: `Did ${axis} come back off its switch?`,
  }),
  'past-switch': (axis) => ({
    text: `Where does ${axis} stand now: past its home switch, so that its dog no longer holds it? Answer yes, or no where it stands short of it.`,
    cautions: cautions('stayClear', 'fingers'),
    short: `Does ${axis} stand past its switch?`,
  }),
  'moved-other': (axis) => ({
    text: `Was it another axis than ${axis} that moved? Answer yes or no.`,
    cautions: cautions('listens', 'stayClear'),
    short: `Did another axis than ${axis} move?`,
  }),
  racked: (axis) => ({
    text: `Was the gantry of ${axis} pulled out of square, one side ahead of the other? Answer yes or no.`,
    cautions: cautions('stayClear', 'leaveIt'),
    short: `Was the gantry of ${axis} twisted?`,
  }),
} satisfies Record<MotionTopic, (axis: string, machine: Machine) => AskWords>;

export const lookAtMotion = ({ topic, axis }: LookAtMotion, machine: Machine): AskWords =>
  looks[topic](axis, machine);

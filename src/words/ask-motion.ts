import type { Ask, MotionTopic } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { caution, cautions, dropCaution } from './cautions.ts';
import type { AskWords } from './instruction.ts';

type Of<Action extends Ask['action']> = Extract<Ask, { readonly action: Action }>;

const moving = (machine: Machine): readonly string[] => [
  ...cautions('listens', 'lateByTwo', 'yourControl', 'stayClear', 'clothing'),
  dropCaution(machine),
];

export const seekWords = ({ axis }: Of<'seek'>, machine: Machine): AskWords => ({
  text: `By your own control, send ${axis} towards its home switch, at its lowest speed, with your hand on the stop. Stop it yourself where it goes the wrong way.`,
  cautions: moving(machine),
  short: `Send ${axis} to its home switch`,
});

export const homeWords = ({ axis }: Of<'home'>, machine: Machine): AskWords => ({
  text: `By your own control, start the homing of ${axis === 'all' ? 'all axes' : axis}, with your hand on the stop. Let it come to its end unless something goes wrong.`,
  cautions: moving(machine),
  short: axis === 'all' ? 'Home all axes' : `Home ${axis}`,
});

export const hardWiredStop = (_ask: Of<'confirm'>, machine: Machine): AskWords => ({
  text: 'The machine file names no stop input. Is there a stop within your reach, wired so that it takes the power from the drives whatever the controller does, and have you seen it work today? Answer yes only if both are so.',
  cautions: [...cautions('listens', 'statusNoProof', 'licensed'), dropCaution(machine)],
  short: 'A hard-wired stop, seen to work?',
});

/** Where the whole travel is shorter, no one can keep so much free. */
const middleBelow = 110;

export function wayFreeWords({ axis }: Of<'confirm'>, machine: Machine): AskWords {
  const letter = axis ?? 'the axis';
  const found = machine.axes.find((each) => each.letter === axis);
  const room =
    found?.kind === 'rotary'
      ? 'at least 50 degrees free either way'
      : found?.travel !== undefined && found.travel < middleBelow
        ? 'in the middle of its travel'
        : 'at least 50 mm free on both sides';
  return {
    text: `Is the way of ${letter} free: ${room}, off its switches, no tool in, spindle off, no work and no clamp in reach, every prop taken out? Answer yes only after you have looked.`,
    cautions: [...cautions('listens', 'stayClear', 'clothing'), dropCaution(machine)],
    short: `Is the way of ${letter} free, both ways?`,
  };
}

type LookAtMotion = Extract<Ask, { readonly action: 'look'; readonly topic: MotionTopic }>;

const looks = {
  direction: (axis) => ({
    text: `Which way did the tool go over the work along ${axis}? Where the table moves, the tool goes the other way over the work. Answer positive, negative or none.`,
    cautions: cautions('listens', 'stayClear'),
    short: `Which way did the tool go, ${axis}?`,
  }),
  reached: (axis) => ({
    text: `Did ${axis} come to its switch, so that the dog operated it? Look, do not reach. Answer yes or no.`,
    cautions: cautions('stayClear', 'fingers'),
    short: `Did ${axis} reach its switch?`,
  }),
  buzzed: (axis) => ({
    text: `Did the motor of ${axis} buzz, whine or knock without turning? Answer yes or no.`,
    cautions: cautions('stayClear', 'leaveIt'),
    short: `Did the motor of ${axis} buzz?`,
  }),
} satisfies Record<MotionTopic, (axis: string) => AskWords>;

export const lookAtMotion = ({ topic, axis }: LookAtMotion): AskWords => looks[topic](axis);

export const measureDistance = (ask: Of<'measure'>): AskWords => {
  const axis = ask.axis ?? 'the axis';
  return ask.where === 'trip on a dial gauge'
    ? {
        text: `Read the dial gauge that stands against ${axis} where it came to rest, in ${ask.unit}. Type the number.`,
        cautions: [...cautions('stayClear', 'fingers'), caution.listens],
        short: `Dial gauge at ${axis}, ${ask.unit}`,
      }
    : {
        text: `Measure how far ${axis} really went, in ${ask.unit}, with a rule, a calliper or a gauge. Type the number.`,
        cautions: cautions('stayClear', 'fingers'),
        short: `How far did ${axis} go, ${ask.unit}?`,
      };
};

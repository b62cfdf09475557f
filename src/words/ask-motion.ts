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

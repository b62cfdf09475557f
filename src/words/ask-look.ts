import type { Ask, ConfirmTopic, MotionTopic } from '../model/ask.ts';
import type { ConfirmAsk, ConfirmOf } from '../model/confirm-ask.ts';
import type { Machine, Subject } from '../model/machine.ts';
import { visible } from '../model/visible.ts';
import { learnWords } from './ask-learn.ts';
import { hasGauge, longWayFree } from './ask-length.ts';
import { lookAtMotion } from './ask-look-motion.ts';
import { hardWiredStop, wayFreeWords } from './ask-motion.ts';
import { causeTopicWords } from './cause/ask-cause.ts';
import { cautions, dropCautions } from './cautions.ts';
import { listed } from './figures.ts';
import type { AskWords } from './instruction.ts';
import { named, shortly, terminalOf } from './place.ts';

type Look = Extract<Ask, { readonly action: 'look' }>;
type LookAtSwitch = Exclude<Look, { readonly topic: MotionTopic }>;
/** A word of each topic for what its ask is about. */
type ConfirmWords = {
  readonly [Topic in ConfirmTopic]: (ask: ConfirmOf<Topic>, machine: Machine) => AskWords;
};

export const lookWords = (ask: Look, machine: Machine): AskWords =>
  'axis' in ask ? lookAtMotion(ask, machine) : lookAtSwitch(ask, machine);

function lookAtSwitch(ask: LookAtSwitch, machine: Machine): AskWords {
  const what = named(ask.subject, machine);
  const told = {
    touched: {
      text: `Look at ${what}: does anything operate it now? A dog, the carriage, a chip, a cable, coolant? Answer yes or no.`,
      cautions: cautions('motorsOff', 'noBridge'),
      short: `Anything on it now? ${shortly(ask.subject, machine)}`,
    },
    power: {
      text: `With ${what} pressed in: what showed you that the drives lost power? A shaft or hand wheel that turns freely (knob-free), a drive or contactor lamp that went out (lamp), a meter (meter); or did power not go away (did-not)?`,
      cautions: [
        ...cautions('statusNoProof', 'meter'),
        ...dropCautions(machine),
        ...cautions('licensed', 'stayClear'),
      ],
      short: 'What showed that drive power went?',
    },
    lamp: {
      text: `Hold a piece of steel, or what works it, at the face of ${what}: is the sensor's own lamp lit? Answer on or off.`,
      cautions: cautions('motorsOff', 'fingers'),
      short: `Sensor's lamp lit? ${shortly(ask.subject, machine)}`,
    },
  } satisfies Record<LookAtSwitch['topic'], AskWords>;
  return told[ask.topic];
}

function propped({ axes }: ConfirmOf<'propped'>, machine: Machine): AskWords {
  const which = axes.length === 0 ? 'every vertical axis' : listed(axes);
  return {
    text: `Prop ${which} with a block that carries its weight, so that it cannot drop. Answer yes when it rests on the block, or when nothing hangs here.`,
    cautions: [...dropCautions(machine, axes), ...cautions('clothing')],
    short: `Is ${which} propped?`,
  };
}

const wasPressed = (ask: ConfirmOf<'pressed'>, machine: Machine): AskWords => ({
  text: `The input of ${whatOf(ask, machine)} answered much more briefly than a held press. Did you press it each time it was asked for? Answer no if nobody touched it.`,
  cautions: cautions('motorsOff'),
  short: 'Did you press it each time?',
});

const whatOf = ({ subject }: { readonly subject: Subject }, machine: Machine): string =>
  named(subject, machine);

const whereOf = ({ subject, at }: ConfirmOf<'signal-plug' | 'still-out'>, machine: Machine): string => {
  if (at !== 'controller') return ' at the switch';
  const terminal = terminalOf(subject, machine);
  return terminal === '' ? ' at the controller' : ` at the controller (${terminal})`;
};

const signalPlug = (ask: ConfirmOf<'signal-plug'>, machine: Machine): AskWords => ({
  text: `Look at the plug of ${whatOf(ask, machine)}${whereOf(ask, machine)}: is it a small signal plug of at most 30 V, with no motor, spindle or mains wire in it? Answer yes only if you know.`,
  cautions: cautions('signalOnly', 'mains', 'licensed'),
  short: 'Signal plug, 30 V at most, nothing else?',
});

const stillOut = (ask: ConfirmOf<'still-out'>, machine: Machine): AskWords => ({
  text: ask.linked
    ? `Before the break ${ask.linked.map(visible).join(' and ')} of ${whatOf(ask, machine)}${whereOf(ask, machine)} were joined with a piece of wire. Is it still in? Yes: still in. No: it is out again.`
    : `Before the break the plug of ${whatOf(ask, machine)}${whereOf(ask, machine)} was pulled. Is it still out? Yes: still out. No: it is back in.`,
  cautions: cautions('signalOnly', 'motorsOff'),
  short: `${ask.linked ? 'Link still in' : 'Still out'}? ${shortly(ask.subject, machine)}`.trimEnd(),
});

const stayedIn = (ask: ConfirmOf<'stayed-in'>, machine: Machine): AskWords => ({
  text: `The status of ${whatOf(ask, machine)} came back while the button should still have been in. Did the button stay in until you turned or pulled it out? Answer no if it came out by itself.`,
  cautions: cautions('statusNoProof', 'licensed'),
  short: 'Did the button stay in by itself?',
});

const stopAreaClear = (ask: ConfirmOf<'stop-area-clear'>, machine: Machine): AskWords => ({
  text: `Next ${whatOf(ask, machine)} is pressed with the drives ready for power. Is everyone out of reach of moving parts, the tool out and every vertical axis propped?`,
  cautions: [...cautions('listens', 'stayClear'), ...dropCautions(machine), ...cautions('licensed')],
  short: 'Everyone clear, axis propped?',
});

const stayedOff = (ask: ConfirmOf<'stayed-off'>, machine: Machine): AskWords => ({
  text: `After ${whatOf(ask, machine)} was unlatched: did everything stay off, with no axis, spindle or drive coming back by itself? Answer yes or no.`,
  cautions: cautions('stayClear', 'statusNoProof'),
  short: 'Did everything stay off?',
});

const confirming = {
  pressed: wasPressed,
  propped,
  'signal-plug': signalPlug,
  'still-out': stillOut,
  'stop-area-clear': stopAreaClear,
  'stayed-off': stayedOff,
  'stayed-in': stayedIn,
  'hard-wired-stop': hardWiredStop,
  'way-free': wayFreeWords,
  'long-way-free': longWayFree,
  'has-gauge': hasGauge,
  ...learnWords,
  ...causeTopicWords,
} satisfies ConfirmWords;

export function confirmWords(ask: ConfirmAsk, machine: Machine): AskWords {
  const say = confirming[ask.topic] as (ask: ConfirmAsk, machine: Machine) => AskWords;
  return say(ask, machine);
}

import type { Ask } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { cautions, dropCautions } from './cautions.ts';
import { secondsText } from './figures.ts';
import type { AskWords } from './instruction.ts';
import { named, shortly } from './place.ts';

type Of<Action extends Ask['action']> = Extract<Ask, { readonly action: Action }>;

export const handsOffWords = (ask: Of<'hands-off'>, _machine: Machine): AskWords => ({
  text: `Take your hands off the machine for ${secondsText(ask.seconds)}. Press nothing, move nothing: the inputs are watched at rest.`,
  cautions: cautions('listens', 'leaveIt', 'licensed'),
  short: `Hands off for ${secondsText(ask.seconds)}`,
});

export function powerWords(ask: Of<'power'>, machine: Machine): AskWords {
  const told = {
    'motors off': {
      text: 'Switch motor and spindle power off. Leave the control power on, so that the controller goes on reporting.',
      cautions: [...dropCautions(machine), ...cautions('clothing', 'charge')],
      short: 'Motor and spindle power off',
    },
    'motors on': {
      text:
        ask.check === 'stop'
          ? 'Switch motor power on by your own control. Start no motion.'
          : 'Next the axes move. Close covers, switch motor power on by your own control, see that every axis holds, then take the props out. Start no motion yet.',
      cautions: [...cautions('listens', 'stayClear'), ...(ask.check === 'stop' ? [] : dropCautions(machine))],
      short: 'Motor power on, no motion',
    },
    'controller off': {
      text: 'Switch the controller off and wait until its lamps are dark.',
      cautions: [...dropCautions(machine), ...cautions('charge')],
      short: 'Controller off',
    },
    'controller on': {
      text: 'Switch the controller on. Leave motor and spindle power off.',
      cautions: cautions('stayClear'),
      short: 'Controller on',
    },
  } satisfies Record<`${typeof ask.what} ${typeof ask.to}`, AskWords>;
  return told[`${ask.what} ${ask.to}`];
}

export function clearWords({ subject }: Of<'clear'>, machine: Machine): AskWords {
  const clear = 'by your own control, as you always do; this tool cannot.';
  if (subject === undefined)
    return {
      text: `The controller reports a halt. First look why it halted, and that nothing is jammed or touched. Then clear the halt ${clear}`,
      cautions: cautions('listens', 'stayClear', 'yourControl'),
      short: 'Look why, then clear the halt',
    };
  return {
    text: `The controller halted when ${named(subject, machine)} was operated: it acts on this input. Clear the halt ${clear}`,
    cautions: cautions('listens', 'yourControl'),
    short: `Clear the halt: ${shortly(subject, machine)}`,
  };
}

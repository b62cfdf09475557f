import { inputOf } from '../../model/machine.ts';
import { listed } from '../figures.ts';
import { named } from '../place.ts';
import {
  type Change,
  type FindingEntry,
  type FindingScene,
  noChange,
  type Of,
  opposite,
  retestOf,
} from './entry.ts';

export const polarityReversed: FindingEntry<'polarity-reversed'> = {
  title: 'Active and inactive are the wrong way round',
  said: ({ input }, { machine, subject }) =>
    `${input} reads active with nobody at ${named(subject, machine)} and inactive while it is pressed.`,
  means:
    'The wire and the switch work: the input follows the press. Only the meaning is reversed, because the active level set in the controller does not suit this contact. Left so, the controller takes a free switch for a struck one and a struck one for a free one.',
  next: [
    'Change the active-level setting of this input, then repeat rest, press and open wire.',
    'If open wire also says that a broken wire goes unnoticed, leave the setting and move the wire to the normally closed blade instead: that cures both.',
    'If the drawing asks for the other contact, it is the blade that is wrong, not the setting.',
  ],
  change: turned,
};

function turned(finding: Of<'polarity-reversed'>, scene: FindingScene): readonly Change[] {
  // Rewiring to the normally closed blade turns the meaning round by itself.
  if (scene.together.includes('break-undetected') || scene.together.includes('polarity-shared')) return [];
  const told = inputOf(scene.machine, finding.input)?.polarity ?? 'unknown';
  const shared =
    scene.machine.polarity === 'one for all'
      ? ' One setting serves all inputs: every one of them has to be tested again.'
      : '';
  return [
    {
      what: 'setting',
      from: `${finding.input} ${told === 'unknown' ? 'as it is set now' : `set to ${told}`}`,
      to: told === 'unknown' ? opposite.unknown : opposite[told],
      why: `the input must read active while the switch is pressed.${shared}`,
      retest: retestOf(scene, 'setting'),
    },
  ];
}

export const polarityShared: FindingEntry<'polarity-shared'> = {
  title: 'One setting for contacts of two kinds',
  said: ({ input, breaks }) =>
    `The one active-level setting cannot suit both ${input} and ${listed(breaks)}.`,
  means:
    'This controller has a single active-level setting for all inputs, and the switches on it are of both kinds, normally open and normally closed. Whichever way it is set, some of them read the wrong way round. The cure is to wire them all alike.',
  next: [
    'Wire every switch normally closed, then set the inputs to be active when open.',
    'Where a switch has no normally closed blade, replace it, or give it an input with a setting of its own.',
    'Repeat rest, press and open wire on every input.',
  ],
  change: ({ input, breaks }, scene): readonly Change[] => [
    {
      what: 'wire',
      from: `normally open and normally closed contacts mixed on ${listed([input, ...breaks])}`,
      to: 'normally closed contacts on all of them',
      why: 'one setting can be right for one kind of contact only.',
      retest: retestOf(scene, 'setting'),
    },
  ],
};

export const polarityUnknown: FindingEntry<'polarity-unknown'> = {
  title: 'The active-level setting was not tested',
  said: ({ input }) =>
    `The stream gives levels for ${input}, but not whether the controller takes it as active.`,
  means:
    'Levels show that the wire and the switch work. Whether the controller understands them the right way round is its setting, and this stream does not report it. A reversed setting would look exactly the same here.',
  next: [
    'Let the controller report the active value too, where its stream can.',
    'Else press the switch and see the controller itself react: a halt, a lamp, a line on its own display. Write down who saw it.',
  ],
  change: noChange,
};

export const declaredOtherwise: FindingEntry<'declared-otherwise'> = {
  title: 'The contact is not the one in the file',
  said: ({ declared, found }, { machine, subject }) =>
    `${named(subject, machine)} is declared ${declared}; pressing and unplugging show ${found}.`,
  means:
    'The machine file or the drawing says one thing, the wire another. What was found counts for the verdict; the paper has to be brought into line, or the next person repairs it back to the wrong state.',
  next: ['Correct the machine file and the drawing, or move the wire to the blade the drawing asks for.'],
  change: noChange,
};

export const notEnabled: FindingEntry<'not-enabled'> = {
  title: 'The controller does not act on this input',
  said: ({ input }) => `The level of ${input} followed the press, but it was never reported active.`,
  means:
    'The electricity arrives: the level at the terminal changes with the switch. The controller does nothing with it: the function is switched off, or assigned to another terminal. A machine in this state runs past the switch.',
  next: [
    'Switch the function on, or assign it to this terminal, in the controller’s settings.',
    'Repeat rest, press and open wire.',
  ],
  change: (finding, scene) => [
    {
      what: 'setting',
      from: `${finding.input} not enabled or not assigned`,
      to: 'enabled and assigned to this terminal',
      why: 'the level changes and the controller takes no notice.',
      retest: retestOf(scene, 'wire'),
    },
  ],
};

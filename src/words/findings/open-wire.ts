import { inputOf, type Switch, switchOf } from '../../model/machine.ts';
import { counted, listed } from '../figures.ts';
import { named } from '../place.ts';
import { type Change, type FindingEntry, type FindingScene, noChange, type Of, retestOf } from './entry.ts';

export const breakUndetected: FindingEntry<'break-undetected'> = {
  title: 'A broken wire goes unnoticed',
  said: (finding, { machine, subject }) =>
    `With its plug out, ${named(subject, machine)} reads on ${finding.input} just as it does at rest.`,
  means:
    'Unplugging opens the circuit for certain. An input that then reads as at rest rests open: the switch is normally open. One that then reads as pressed rests closed: normally closed. A normally open switch whose wire breaks, or whose plug falls out, goes on looking healthy, and the next time it is struck nothing happens.',
  next: [
    'Move the signal wire from the normally open blade of the switch (often marked NO) to its normally closed blade (often marked NC); the common blade stays. Power off first.',
    'Set the input to be active when open, then repeat rest, press and open wire.',
    'No normally closed blade? Fit a switch with a changeover contact, or a sensor whose output conducts at rest. Until then press this switch before every use and write it down.',
    'A touch plate is open by its nature: touch it to the tool by hand before every probing.',
  ],
  change: rewire,
};

/** Row 0 1 0: normally open and active when closed. Row 1 0 1: normally open and active when open, which already suits the rewired switch. */
function rewire(finding: Of<'break-undetected'>, scene: FindingScene): readonly Change[] {
  const found = switchOf(scene.machine, scene.subject);
  if (found?.duty.includes('probe') && found.sensor !== 'npn' && found.sensor !== 'pnp') return [];
  const parallel = inputOf(scene.machine, finding.input)?.joined === 'parallel';
  const { from, to } = contactChange(found, parallel);
  const licensed =
    found?.duty.includes('stop') || found?.duty.includes('door')
      ? ' A stop or door circuit is changed by licensed practice only.'
      : '';
  const wire: Change = {
    what: 'wire',
    from,
    to,
    why: `a broken wire or a pulled plug must read as pressed, not as at rest.${licensed}`,
    retest: retestOf(scene, 'wire'),
  };
  if (scene.together.includes('polarity-reversed'))
    return [{ ...wire, why: `${wire.why} The setting, active when open, then fits as it is.` }];
  const breaks =
    finding.breaks.length === 0
      ? ''
      : ` One setting serves all inputs: this also turns ${listed(finding.breaks)} wrong, which then ${finding.breaks.length === 1 ? 'needs' : 'need'} a normally closed contact too. Rewire them all, or none.`;
  return [
    wire,
    {
      what: 'setting',
      from: `${finding.input} active when closed`,
      to: `${finding.input} active when open`,
      why: `the rewired switch is closed at rest and opens when pressed.${breaks}`,
      retest: retestOf(scene, 'setting'),
    },
  ];
}

function contactChange(found: Switch | undefined, parallel: boolean): { from: string; to: string } {
  if (found !== undefined && found.sensor !== 'contact' && found.sensor !== 'unknown')
    return {
      from: 'sensor whose output conducts when it detects',
      to: 'sensor of the same kind whose output conducts at rest',
    };
  return parallel
    ? {
        from: 'normally open contacts in parallel',
        to: 'normally closed blades in series, or one input for each switch',
      }
    : { from: 'normally open blade', to: 'normally closed blade' };
}

export const alreadyOpen: FindingEntry<'already-open'> = {
  title: 'The circuit looks open already',
  said: ({ input }) => `${input} reads active at rest, pressed and unplugged alike.`,
  means:
    'Pulling the plug changed nothing, although the input reads as it would with an open circuit. The likeliest reading is that the circuit is open before it ever reaches the switch: a broken core, a wire clamped on its insulation, an empty common blade. It may also be a normally open switch on an input that is stuck.',
  next: [
    'Follow the two wires from the plug to the switch; tug each crimp and screw.',
    'See that one wire sits on the common blade: two wires across the normally open and the normally closed blade never make a circuit.',
    'Swap this plug with that of an input that works: if the fault stays with the terminal, it is at the controller; if it goes with the plug, it is in the cable or the switch.',
  ],
  change: noChange,
};

export const floatsOpen: FindingEntry<'floats-open'> = {
  title: 'The open input floats',
  said: ({ input, edges }) => `With the plug out, ${input} changed ${counted(edges, 'time')} by itself.`,
  means:
    'An input with nothing connected must settle on one level. This one wanders, so nothing pulls it to a rest: a broken wire may read as pressed, as released, or as both in turn. A pull-up or pull-down resistor is missing, switched off or too weak.',
  next: [
    'Switch on the input’s pull-up in the controller’s settings, where it has one.',
    'Else fit a resistor from signal to logic supply (contact to ground) or from signal to 0 V (contact to supply): 1 to 4.7 kohm is common practice at 5 V. The controller’s manual decides.',
    'Repeat open wire.',
  ],
  change: (finding, scene) => [
    {
      what: 'wire',
      from: `${finding.input} without an effective pull resistor`,
      to: 'pull-up or pull-down switched on or fitted, as the controller’s manual says',
      why: 'an open wire must read the same every time.',
      retest: retestOf(scene, 'wire'),
    },
  ],
};

export const wrongPlug: FindingEntry<'wrong-plug'> = {
  title: 'Another plug was pulled',
  said: (_finding, { machine, subject }) =>
    `${named(subject, machine)} still answered a press while its plug was said to be out.`,
  means:
    'A switch that answers is connected. Whatever was pulled was not its plug, so what the stream showed meanwhile says nothing about this wire.',
  next: [
    'Put the pulled plug back, tag both ends of the right cable, and repeat open wire.',
    'Press the neighbours again: one of them was out meanwhile.',
  ],
  change: noChange,
};

export const stillOut: FindingEntry<'still-out'> = {
  title: 'Something is still unplugged',
  said: ({ what }, { machine }) =>
    `Not seen back in: ${listed(what.map((each) => `the plug of ${named(each.subject, machine)} at the ${each.at}`))}.`,
  means:
    'A plug that was pulled for a test was not seen to go back. Until it is in and its switch has answered a press, that switch does nothing, whatever an earlier result says.',
  next: [
    'Plug it in, press that switch once and see it answer.',
    'Resume the session: it asks for the plug first.',
  ],
  change: ({ what }, scene) =>
    what.map((each) => ({
      what: 'wire',
      from: `plug of ${each.subject} out at the ${each.at}`,
      to: 'plugged in and latched',
      why: 'its switch can do nothing while the plug is out.',
      retest: `press of ${each.subject}${each.subject === scene.subject ? ', then open wire' : ''}`,
    })),
};

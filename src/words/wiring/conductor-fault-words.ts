import type { FaultEntry } from './fault-entry.ts';

export const conductorFaultWords = {
  'signal-core-open': {
    title: 'Signal core broken',
    what: 'The signal wire is interrupted somewhere between the controller and the switch.',
    fix: 'Re-terminate or replace the core; a spare core of the cable will do.',
  },
  'common-core-open': {
    title: 'Return core broken',
    what: 'The wire that leads back to 0 V (or to +) is interrupted; where it is chained, several inputs go with it.',
    fix: 'Repair the return; run one from a star point to each switch, never chained through switches.',
  },
  'signal-to-0-v': {
    title: 'Signal touches 0 V or the frame',
    what: 'The signal wire touches just what the closed contact would join it to.',
    fix: 'Find the chafed place, lay the cable elsewhere, sleeve it or fit a grommet.',
  },
  'fed-signal-to-0-v': {
    title: 'Signal touches 0 V or the frame',
    what: 'The signal wire touches 0 V while the contact feeds it with +; the supply is shorted whenever the contact is closed.',
    fix: 'Find the chafed place and sleeve it; give the feed of the switches a fuse or a resettable one.',
  },
  'signal-to-plus': {
    title: 'Signal touches +',
    what: 'The signal wire touches the positive supply; the supply is shorted whenever the contact closes.',
    fix: 'Replace the cable or the plug.',
  },
  'fed-signal-to-plus': {
    title: 'Signal touches +',
    what: 'The signal wire touches just what the closed contact would join it to.',
    fix: 'Replace the cable or the plug.',
  },
  'signals-together': {
    title: 'Two signal cores touch',
    what: 'The signal wires of two inputs touch; either contact holds both.',
    fix: 'Look for a whisker, a stray strand or a bridge of solder in the plug.',
  },
  'plug-half-mated': {
    title: 'Plug half in',
    what: 'A plug makes contact now and then.',
    fix: 'Push it home and latch it; replace worn pins.',
  },
  'loose-clamp': {
    title: 'Clamped on insulation, loose screw or dry joint',
    what: 'The wire sits in its terminal without metal on metal, and answers to a tug at most.',
    fix: 'Strip 6 to 7 mm anew, use a ferrule, tighten to the torque of the terminal.',
  },
  'wrong-terminal': {
    title: 'Wire on another terminal',
    what: 'The signal wire ends on a terminal that is not this input’s.',
    fix: 'Move the wire to its terminal.',
  },
  'inputs-crossed': {
    title: 'Two inputs crossed',
    what: 'The wires of two inputs are exchanged: each looks perfect until it is pressed.',
    fix: 'Exchange the wires, not the labels, and press every switch again.',
  },
  'plug-shifted': {
    title: 'Connector shifted or mirrored',
    what: 'Every wire of a connector is on another pin, and one on none.',
    fix: 'Turn or re-pin the plug and key it.',
  },
  'ends-swapped': {
    title: 'The two ends of an axis exchanged',
    what: 'The switch at one end stands for the other: the controller stops the wrong direction.',
    fix: 'Exchange the two wires at the controller.',
  },
  moisture: {
    title: 'Moisture in plug or cable',
    what: 'A film of 5 to 100 kohm joins the signal to what the contact would join it to, and drifts as the machine warms up.',
    fix: 'Replace the plug or cable, and lead it so that drops run off before the plug.',
  },
  'core-breaks-when-flexed': {
    title: 'Core breaks when the cable moves',
    what: 'A core is broken inside its sleeve: it makes contact while parked and opens at some positions of the axis.',
    fix: 'Cable made for chains, strain relief, bends no tighter than 7.5 to 10 diameters.',
  },
} as const satisfies Record<string, FaultEntry>;

import { type FindingEntry, noChange } from './entry.ts';
import { motionEntry } from './motion-entry.ts';

export const headsAway = motionEntry<'heads-away'>({
  title: 'An axis runs away from its home switch',
  said: ({ axis }) => `${axis} was sent, or went, away from the end its home switch stands at.`,
  means:
    'The direction or the home end of this axis is set wrong, and it runs until it meets its far end. Reverse one of the two, not both: two wrong settings cancel at the switch and mirror every part.',
  next: [
    'Leave the axis stopped. Look which way the tool goes over the work for a positive command of 5 mm.',
    'If it goes the commanded way, change the home end; if it goes the other way, invert the direction.',
    'Repeat the first seek with a hand on the stop.',
  ],
});

export const headsForWork = motionEntry<'heads-for-work'>({
  title: 'An axis seeks towards the work',
  said: ({ axis }) => `${axis} was sent towards the work while it sought its home.`,
  means:
    'A spindle axis homes at its top, away from the work. Sent down, tool, work and spindle meet at approach speed.',
  next: [
    'Set the home end of this axis to its top.',
    'Take tool and work out before the next seek, and keep a hand on the stop.',
  ],
});

export const mirrored = motionEntry<'mirrored'>({
  title: 'The axis is mirrored',
  said: ({ axis }) => `The tool goes the opposite way over the work to what is commanded of ${axis}.`,
  means:
    'Homing works, because direction and home end are both wrong and cancel. Parts come out mirrored: text reads backwards, arcs turn the other way, climb milling becomes conventional. On a moving table remember that the tool goes over the work the other way than the table moves.',
  next: [
    'Look once more which way the tool goes over the work for a positive command.',
    'If it is opposite, turn round the direction and the home end together.',
    'Cut a letter F or R into scrap: only a part that is not its own mirror image proves it.',
  ],
});

export const turned = motionEntry<'turned'>({
  title: 'The axes are turned against the file',
  said: ({ axis }) =>
    `The tool goes the opposite way over the work for ${axis}, and for another axis too: parts are right, and lie turned.`,
  means:
    'Two axes go opposite to what ISO 841 calls positive, which turns the part by half a turn and mirrors nothing. The machine file, the corner of the zero and every drawing that says left and right speak of another corner than the machine does.',
  next: [
    'Decide which corner is the home corner, and write it into the machine file.',
    'Or turn round direction and home end of both axes together.',
  ],
});

export const wrongSwitch = motionEntry<'wrong-switch'>({
  title: 'Another switch answered while an axis sought its own',
  said: ({ axis, input }) =>
    `While ${axis} moved, ${input ?? 'another input'} answered, which is not its home switch.`,
  means:
    'Either two switch wires are crossed or two motor plugs are. Both look the same in the stream, and in both the axis does not stop at its own switch.',
  next: [
    'Say which axis really moved; press each switch by hand and watch which input answers.',
    'Crossed inputs: exchange the two wires. Crossed motors: exchange the plugs, with drive power off and the drives discharged.',
  ],
});

export const axisOrder = motionEntry<'axis-order'>({
  title: 'The axes home in a dangerous order',
  said: ({ axis }) => `${axis} set off before it should have.`,
  means:
    'Where X or Y move before the spindle is up, the tool may sweep through clamps and work. Or the order is another than the file tells.',
  next: [
    'Set the homing order so that the spindle axis goes up first.',
    'Then home all axes once more, without tool and work.',
  ],
});

export const gantry = motionEntry<'gantry'>({
  title: 'The two sides of a gantry do not agree',
  said: ({ axis }) => `The two motors or the two switches of ${axis} do not work together.`,
  means:
    'A gantry driven at both sides twists where one side runs on, runs the other way or stops at the wrong switch. It can bend the gantry and break its drive in one homing.',
  next: [
    'Leave it stopped, drive power off. Press the switch of each side by hand and see that its own side answers.',
    'Move one side at a time by hand where the machine allows it, and compare directions.',
    'Then seek at the lowest speed with a hand on the stop.',
  ],
});

export const stopTold: FindingEntry<'stop-told'> = {
  title: 'The stop was claimed, not tested',
  said: () =>
    'The machine file names no stop input: that a hard-wired stop removes drive power was said by the person, not tested here.',
  means:
    'Axes were moved on the word that a hard-wired stop is in reach and works. Nothing in this record shows that it does.',
  next: [
    'Have the emergency-stop circuit tested by licensed practice and your local code.',
    'Where its status is wired to the controller, name it in the machine file, and repeat the stop check.',
  ],
  change: noChange,
};

import { counted } from '../figures.ts';
import { named } from '../place.ts';
import { type FindingEntry, noChange, retestOf } from './entry.ts';

export const neverChanges: FindingEntry<'never-changes'> = {
  title: 'The input never changes',
  said: ({ input }, { machine, subject }) =>
    `${named(subject, machine)} was pressed; ${input} stayed as it is at rest, and no other input answered.`,
  means:
    'The controller cannot see this switch. At rest that looks perfectly healthy, which is why only a press shows it. Whether the unplugged wire changed anything tells where to look: if it did, the cable and the input are alive and the fault is at the switch; if it did not, it is in the wire or at the controller.',
  next: [
    'Was it the right switch, and did it click? Press it again, slowly.',
    'A sensor: does its own lamp change with steel at its face? Dark: look for its supply. Lit: look for the wrong output type (NPN or PNP) for this input.',
    'Two wires across the normally open and the normally closed blade make no circuit: one wire belongs on the common blade.',
    'Swap its plug with that of an input that works: if the fault goes with the plug, it is in cable or switch; if it stays, it is at the controller’s terminal or its setting.',
  ],
  change: noChange,
};

export const stuckActive: FindingEntry<'stuck-active'> = {
  title: 'The input is always active',
  said: ({ input }, { machine, subject }) =>
    `${input} reads active whether ${named(subject, machine)} is pressed or not.`,
  means:
    'The controller takes this switch for struck all the time. Either something holds it in, or its contact is welded or bridged, or the wire is open or shorted. If unplugging releases it, look at the switch; if it does not, look at the cable and the input.',
  next: [
    'Look at the switch: a dog, a bent lever, a chip on a sensor’s face.',
    'Wet or dirty plug? Power off, dry and clean it.',
    'Swap its plug with that of an input that works: the fault goes with the plug (cable, switch) or stays (terminal, setting).',
  ],
  change: noChange,
};

export const sticks: FindingEntry<'sticks'> = {
  title: 'The switch does not spring back',
  said: (_finding, { machine, subject }) => `${named(subject, machine)} stayed operated after it was let go.`,
  means:
    'The first strike is seen, the next one is not: a switch that hangs in has nothing left to report. Dirt, a dry plunger, a bent lever or a worn spring are the usual reasons.',
  next: [
    'Power off; clean it and move it by hand until it springs back by itself.',
    'Replace it where it does not.',
  ],
  change: (_finding, scene) => [
    {
      what: 'mechanics',
      from: 'switch that stays operated',
      to: 'cleaned or replaced, springing back by itself',
      why: 'a switch that hangs in misses the next strike.',
      retest: retestOf(scene, 'mechanics'),
    },
  ],
};

export const slowAnswer: FindingEntry<'slow-answer'> = {
  title: 'The answer comes late',
  said: ({ input }) => `${input} was reported only when the switch was let go, or long after.`,
  means:
    'The press does arrive, but late. A long input filter, a large capacitor on the input or a stream that reports rarely all look like this. At speed a late answer means a longer run past the switch.',
  next: [
    'Let the controller report more often and press again.',
    'Shorten the input filter in the controller’s settings; a few milliseconds are common practice for a mechanical switch.',
    'Look for a capacitor on the input that does not belong there.',
  ],
  change: ({ input }, scene) => [
    {
      what: 'setting',
      from: `${input} answers late`,
      to: 'input filter of a few milliseconds, and reports often enough to see it',
      why: 'at speed a late answer is a longer run past the switch.',
      retest: retestOf(scene, 'wire'),
    },
  ],
};

export const chatters: FindingEntry<'chatters'> = {
  title: 'One press gives several edges',
  said: ({ input, edges }) => `One press changed ${input} ${counted(edges, 'time')}.`,
  means:
    'A clean press is one change and one change back. More of them mean bounce that no filter catches, a worn contact, or a loose joint that moves with the press. It may trip twice, or end a slow approach too early.',
  next: [
    'Tug the plug and each joint while watching the input.',
    'Set a few milliseconds of input filter, where there is none.',
    'Replace a switch whose contact is worn.',
  ],
  change: ({ input }, scene) => [
    {
      what: 'setting',
      from: `${input} without a filter that catches its bounce`,
      to: 'input filter of a few milliseconds, once plug and joints are tight',
      why: 'one press must be one change.',
      retest: retestOf(scene, 'wire'),
    },
  ],
};

export const flickers: FindingEntry<'flickers'> = {
  title: 'The input changes by itself',
  said: ({ input, edges }) =>
    edges === undefined
      ? `${input} was found changing by itself, so presses on it could not be told from its own changes.`
      : `With hands off, ${input} changed ${counted(edges, 'time')}.`,
  means:
    'Nobody touched it and it moved. A loose joint, a half-mated plug, a missing pull resistor or noise from a drive or a spindle are the usual reasons. Such an input stops the machine without cause, and its answer to a press cannot be told from its own noise.',
  next: [
    'Power off; reseat the plug and tug each crimp and screw, then watch it again.',
    'See whether it comes with one thing: the spindle, one axis moving, one place of a cable. Change one thing at a time.',
    'Check that the input has its pull resistor and that the signal cable runs apart from motor cables.',
  ],
  change: noChange,
};

export const missesPresses: FindingEntry<'misses-presses'> = {
  title: 'Some presses go unseen',
  said: ({ input, answered, asked }, { machine, subject }) =>
    `${named(subject, machine)} was pressed ${counted(asked, 'time')}; ${input} answered ${answered === 0 ? 'none' : answered}.`,
  means:
    'A switch that answers now and then is worse than one that never does: it passes a quick look. A worn or dirty contact, a loose joint, a lever that only just reaches, or a filter longer than the press all look like this.',
  next: [
    'Press again slowly and fully, and listen for the click each time.',
    'Power off; reseat the plug, tug each crimp and screw, clean the actuator.',
    'Replace the switch where it goes on missing; a missed press is never averaged away.',
  ],
  change: noChange,
};

import { named } from '../place.ts';
import { type FindingEntry, noChange } from './entry.ts';

export const powerStaysOn: FindingEntry<'power-stays-on'> = {
  title: 'Pressing the stop does not take the power away',
  said: (_finding, { machine, subject }) =>
    `With ${named(subject, machine)} pressed in, the drives kept their power.`,
  means:
    'A stop button that only tells the controller is a request to a program. An emergency stop has to remove drive power by its own circuit, whatever any program does. Do not put this machine to use until that is put right.',
  next: [
    'Leave the machine off. Have the emergency-stop circuit made by licensed practice and your local code (the requirements stand in IEC 60204-1 and ISO 13850).',
    'Then repeat the stop check.',
  ],
  change: (_finding, scene) => [
    {
      what: 'wire',
      from: 'stop that does not remove drive power',
      to: 'hard-wired removal of drive power, by licensed practice',
      why: 'a status input stops nothing.',
      retest: `stop of ${scene.subject}`,
    },
  ],
};

export const statusNotFollowing: FindingEntry<'status-not-following'> = {
  title: 'The stop’s status does not follow the button',
  said: ({ input }, { machine, subject }) =>
    `${named(subject, machine)} was pressed and ${input} did not follow.`,
  means:
    'The controller does not learn that the stop was pressed. The contact block may have come off the head, the status wire may be broken, or it is wired to another input. Whether power goes is a separate question, answered separately.',
  next: [
    'Power off; look whether the contact block still sits on the button’s head.',
    'Follow the status wire to its terminal; press again and watch every input.',
    'Changes in the stop circuit itself belong to licensed practice.',
  ],
  change: noChange,
};

export const restarts: FindingEntry<'restarts'> = {
  title: 'Something comes back when the stop is unlatched',
  said: (_finding, { machine, subject }) =>
    `Unlatching ${named(subject, machine)} alone brought power or motion back.`,
  means:
    'Unlatching a stop may only allow a restart; it must never be one. The restart has to be a separate, deliberate act (IEC 60204-1 and ISO 13850 say so). A person freeing a jammed part unlatches the stop with a hand still in the machine.',
  next: [
    'Leave the machine off. Have the restart interlock made by licensed practice and your local code.',
    'Then repeat the stop check.',
  ],
  change: (_finding, scene) => [
    {
      what: 'wire',
      from: 'power or motion returns on unlatching',
      to: 'a separate, deliberate restart, by licensed practice',
      why: 'unlatching must start nothing.',
      retest: `stop of ${scene.subject}`,
    },
  ],
};

export const doesNotLatch: FindingEntry<'does-not-latch'> = {
  title: 'The stop button does not stay in',
  said: (_finding, { machine, subject }) => `The button of ${named(subject, machine)} came out by itself.`,
  means:
    'An emergency stop has to stay operated until somebody lets it out on purpose (ISO 13850). One that springs back allows a restart while the reason for stopping is still there.',
  next: [
    'Have the button replaced by a latching one with direct opening contacts (IEC 60947-5-5), by licensed practice and your local code.',
    'Then repeat press, open wire and stop for it.',
  ],
  change: (_finding, scene) => [
    {
      what: 'mechanics',
      from: 'a button that springs back',
      to: 'a latching stop button',
      why: 'a stop must hold until it is let out on purpose.',
      retest: `press, open wire and stop of ${scene.subject}`,
    },
  ],
};

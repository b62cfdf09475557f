import { listed } from './figures.ts';

/** What a change between two sessions may come from. Each is a direction to look in, never a finding. */
export const suggestionWords = {
  'other-checks':
    'The two sessions did not ask for the same. A verdict that is missing on one side is no change of the machine.',
  'plugs-exchanged': (subjects: string) =>
    `${subjects} answer on each other’s inputs now: two plugs, or two lines of the machine file, were probably exchanged.`,
  'answers-elsewhere': (subject: string) =>
    `${subject} answers on another input than before: its plug or its terminal was moved.`,
  'answers-no-more': (subject: string) =>
    `${subject} answered before and answers nowhere now: look at its plug, its wire and the switch itself, in this order.`,
  'setting-changed': (subject: string) =>
    `${subject} rests at the same level and is read the other way round: a polarity setting in the controller was changed.`,
  'contact-and-setting': (subject: string) =>
    `${subject} rests at the other level and is still read as not active: contact and setting were both changed. Its broken wire may go unnoticed now; test it again.`,
  'operated-or-open': (subject: string) =>
    `${subject} rests at the other level and is read the other way round: it is operated, its wire is open, or its contact was exchanged without its setting.`,
  'break-unnoticed': (subject: string) =>
    `A broken wire of ${subject} was noticed before and would go unnoticed now.`,
  'connector-together': (connector: string) =>
    `More than one input of connector ${connector} changed: look at that plug and at what its wires have in common first.`,
  slower:
    'Reports come further apart: a pulse between two of them is lost more easily. Look at the baud rate and at how often the controller is set to report.',
  faster: 'Reports come closer together: short pulses that went unseen before may be seen now.',
  'worse-line':
    'More of the stream is lost or unreadable: look at the cable to the controller, its shield and what runs beside it.',
  'better-line': 'Less of the stream is lost or unreadable than before.',
  restarts: 'The controller restarted while it was watched: look at its supply.',
  mended: (subject: string, kinds: string) => `${kinds} is no longer found on ${subject}, and it was tested.`,
} as const;

/** How two sessions beside each other are told. Names come from files and are shown with escapes. */
export const compareWords = {
  sessions: (old: string, now: string) => `Session of ${old} beside session of ${now}.`,
  twoMachines: 'These are sessions of two different machines, by the names in their files:',
  noChanges:
    'Nothing below is a change: it is how two machines are unlike, and no cause is looked for. To see what changed on one machine, name two sessions of it.',
  onlyIn: (machine: string, subjects: readonly string[]) => `Only on ${machine}: ${listed(subjects)}.`,
  whereToLook: 'Where to look (the tool changes nothing):',
  none: 'Nothing differs.',
  noFinding: 'none',
  notInFile: 'not in the machine file',
  notStated: 'not stated',
  notTested: 'not tested',
  all: 'all',
} as const;

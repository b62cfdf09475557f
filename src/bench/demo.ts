import type { FindingKind } from '../model/finding.ts';
import type { Subject } from '../model/machine.ts';
import type { CheckName, Status } from '../model/verdict.ts';

/** What is planted in the scenario for the first run anybody makes. */
export const planted: readonly string[] = [
  'normally-open:x-far',
  'crossed:y-home,z-home',
  'broken-wire:y-far',
];

export interface MustBeFound {
  readonly check: CheckName;
  readonly subject: Subject;
  readonly status: Status;
  readonly kinds: readonly FindingKind[];
}

const inputs = ['x-home', 'x-far', 'y-home', 'y-far', 'z-home', 'probe', 'stop', 'doors'];
const switches = [
  'x-home',
  'x-far',
  'y-home',
  'y-far',
  'z-home',
  'probe',
  'stop',
  'doors/flap',
  'doors/hatch',
];

/** What differs from a sound machine, reasoned from the wiring alone. */
const wrong: readonly MustBeFound[] = [
  // A normally open contact whose setting fits it: pressed it answers, unplugged it reads as at rest.
  {
    check: 'open-wire',
    subject: 'x-far',
    status: 'limited',
    kinds: ['break-undetected', 'declared-otherwise'],
  },
  // Crossed wires: each switch answers on the other's terminal, and its own plug opens the other's input.
  { check: 'press', subject: 'y-home', status: 'failed', kinds: ['answers-elsewhere'] },
  { check: 'press', subject: 'z-home', status: 'failed', kinds: ['answers-elsewhere'] },
  { check: 'open-wire', subject: 'y-home', status: 'failed', kinds: ['answers-elsewhere'] },
  { check: 'open-wire', subject: 'z-home', status: 'failed', kinds: ['answers-elsewhere'] },
  // A broken wire of a normally closed contact: open, thus active, whatever is done to the switch.
  { check: 'press', subject: 'y-far', status: 'failed', kinds: ['stuck-active'] },
  { check: 'open-wire', subject: 'y-far', status: 'failed', kinds: ['stuck-active', 'already-open'] },
];

function sound(check: CheckName, subject: Subject): MustBeFound {
  return { check, subject, status: 'proved', kinds: [] };
}

/** Nothing was found wrong, and nothing proved either. */
function without(status: 'not-tested' | 'inconclusive', check: CheckName, subject: Subject): MustBeFound {
  return { check, subject, status, kinds: [] };
}

/**
 * What moves, in the end: only X, whose switches both were proved. The crossed wires and the broken one keep Y and Z where they are, so that nothing is known of how all
 * three go together, nor of their stops, nor where their machine zero lies.
 */
const motion: readonly MustBeFound[] = [
  sound('seek', 'X'),
  without('not-tested', 'seek', 'Y'),
  without('not-tested', 'seek', 'Z'),
  without('inconclusive', 'seek', 'axes'),
  sound('homing', 'X'),
  without('not-tested', 'homing', 'Y'),
  without('not-tested', 'homing', 'Z'),
  sound('stopping', 'X'),
  without('inconclusive', 'stopping', 'Y'),
  without('inconclusive', 'stopping', 'Z'),
  sound('envelope', 'X'),
  without('inconclusive', 'envelope', 'Y'),
  without('inconclusive', 'envelope', 'Z'),
];

/** Every verdict of the first run: the planted faults, and nothing anywhere else. */
export const mustBeFound: readonly MustBeFound[] = [
  ...inputs.map((input) => sound('rest', input)),
  ...switches.map((subject) => sound('press', subject)),
  ...switches.map((subject) => sound('open-wire', subject)),
  sound('stop', 'stop'),
  ...motion,
].map(
  (expected) =>
    wrong.find((each) => each.check === expected.check && each.subject === expected.subject) ?? expected,
);

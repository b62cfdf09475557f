import type { Millis } from '../../model/units.ts';
import type {
  Coverage,
  FoundWhen,
  ReadAs,
  SpreadStudied,
  StudiedState,
  WiringStudy,
} from '../../model/wiring-study.ts';
import { percentText, timeText } from '../figures.ts';
import { ampText, wattText } from './quantities.ts';

export const foundWords = {
  'at once': 'at once',
  'next press': 'at the next press',
  unplugging: 'only by unplugging',
  never: 'never',
} as const satisfies Record<FoundWhen, string>;

/** The same in a column of four signs; `compareStatements.codes` says what each means. */
export const foundCodes = {
  'at once': 'once',
  'next press': 'next',
  unplugging: 'pull',
  never: 'NO',
  harmless: 'mild',
  none: '-',
} as const satisfies Record<FoundWhen | 'harmless' | 'none', string>;

export const readWords = {
  active: 'active',
  inactive: 'inactive',
  uncertain: 'depends on the unit',
  unsteady: 'unsteady',
} as const satisfies Record<ReadAs, string>;

export const stateWords = {
  rest: 'at rest',
  pressed: 'pressed',
  broken: 'at rest, signal core broken',
} as const satisfies Record<StudiedState, string>;

/** Sentences that stand in every document about a wiring. */
export const studyStatements = {
  mismatch:
    'This wiring does not surely work: a sound switch does not read inactive at rest and active when pressed. What it finds or misses is beside the point; change it first.',
  computed:
    'Computed from the circuit, not measured on a machine. The polarity setting is taken to be right: a sound switch that is pressed reads active.',
  dangerous:
    'Dangerous means here: a press by hand, by the machine or a short one no longer surely reads active, rest reads as a press, or a stop button does not remove power.',
  found:
    'Found at once: the input reads active, or is unsteady, with nobody at the switch on a working day. At the next press: a press by hand does not read active, does not end, or shows several edges. A reading that depends on the unit is not counted as found.',
  weights:
    'Likelihoods are relative judgements of the trade, for a new build and for a machine that worked. They have no source.',
  coverage:
    'The share is formed as ISO 13849-1 defines diagnostic coverage: dangerous failures found, over all dangerous failures, with these likelihoods in place of failure rates. No performance level follows from it, and no safety function is rated by it.',
  license:
    'Mains, drives, guards and the emergency stop belong to local code and licensed practice. This tool stops nothing.',
} as const;

/** "finds 57 % of the dangerous faults at once, 88 % with the next press (93 % if it is unplugged too)". */
export const coverageText = ({ atOnce, byPress, byUnplugging, dangerous }: Coverage): string =>
  dangerous === 0
    ? 'no dangerous fault is known'
    : `${percentText(atOnce)} found at once, ${percentText(byPress)} with the next press, ${percentText(byUnplugging)} if it is unplugged too`;

export const contactText = ({ wiring }: WiringStudy): string =>
  wiring.contactAssumed ? `${wiring.contact} (assumed; the machine file does not say)` : wiring.contact;

export const beyondWords = {
  'power-stays-on': 'No reading of this input can show it.',
  'trip-wanders': 'The levels stay right; only repeated trip points show it.',
  'one-bit-for-many': 'The levels stay right; only pressing each switch in turn shows it.',
} as const;

/** "inactive 97 %, active 3 % of 100 drawn; corners differ", or, where nothing had to be drawn, "inactive: so at every corner". */
export function spreadText({ boards, readings, sureAtCorners }: SpreadStudied): string {
  const said = [...readings]
    .sort((one, other) => other.share - one.share)
    .map(({ reported, share }) =>
      readings.length === 1 ? readWords[reported] : `${readWords[reported]} ${percentText(share)}`,
    )
    .join(', ');
  if (boards === 0) return `${said}: so at every corner`;
  return `${said} of ${boards} drawn; corners ${sureAtCorners ? 'agree' : 'differ'}`;
}

/** A computed time; infinite where the pin never gets there. */
export function timeLimitText(time: Millis): string {
  if (!Number.isFinite(time) || time === 0) return 'none';
  return time < 0.05 ? 'less than 0.1 ms' : timeText(time);
}

export const compareStatements = {
  order:
    'Best first: what works at all; then what is found at once on a machine that worked, in steps of two per cent; then what a press finds; then the smaller margin in volts.',
  misses: 'What even this one does not find at rest, most likely first:',
  doesNotWork: 'does not work',
  columns:
    'Old, new: the share of dangerous faults that is found on a machine that worked, or on a new build, at once or with a press too. Rest, pressed: margins at the terminal. Current: through the closed contact. Contact, leak: the highest contact resistance still read as closed, the lowest leak still read as open.',
  codes:
    'once: found at once. next: at the next press. pull: only by unplugging. NO: never. mild: not dangerous with this wiring. -: cannot happen with it.',
  missesNothing: 'Nothing that is known goes unnoticed at rest.',
} as const;

/** Above what a small resistor is made for, W: a quarter, and half of that for parts that stay cool (common practice, no source). */
const smallPart = 0.125;

/** "series, 238 mW: more than a part of an eighth of a watt stands". */
export const heatText = ({ part, watts }: { readonly part: string; readonly watts: number }): string =>
  watts > smallPart
    ? `${part}, ${wattText(watts)}: needs a part for ${watts > 0.25 ? 'more than a quarter' : 'a quarter'} of a watt`
    : `${part}, ${wattText(watts)}`;

export const clampText = (amps: number): string =>
  `${ampText(amps)} through its protection: more than most chips stand for long`;

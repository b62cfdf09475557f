import type { PlugEnd } from '../../model/ask.ts';
import type { SearchOrder } from '../../model/cause-facts.ts';
import { type DeedName, isMeterDeed } from '../../model/deed-names.ts';
import { inputOf, type Machine, type Switch } from '../../model/machine.ts';
import type { Missing } from '../../model/verdict.ts';
import { highestPlugVoltage } from '../limits.ts';
import type { Kind } from '../troubleshooting/deed.ts';
import { deeds } from '../troubleshooting/deeds/all.ts';
import type { Candidates } from './candidates.ts';
import type { Site } from './site.ts';

export interface AllowedBy {
  readonly machine: Machine;
  readonly of: Switch;
  readonly candidates: Candidates;
  readonly order: Pick<SearchOrder, 'stopProved'>;
}

/**
 * What keeps a deed from ever being asked of a person here; undefined where it may be. Nobody goes where the file says no hand
 * reaches, pulls a plug whose voltage is told to be unknown or above the limit, joins two terminals of a circuit nobody declared,
 * or switches drives on before it was shown that the stop takes their power away.
 */
export function forbids(deed: DeedName, by: AllowedBy): Missing | undefined {
  const { of, candidates, machine, order } = by;
  if (atTheSwitch.includes(deed) && of.reach !== 'by hand') return 'out-of-reach';
  if (byHand.includes(deed) && of.reach === 'never') return 'out-of-reach';
  if (isPlugged(deed)) {
    if (of.reach === 'never') return 'out-of-reach';
    if (of.voltage.known === 'told-unknown') return 'voltage-unknown';
    if (of.voltage.known === 'volts' && of.voltage.volts > highestPlugVoltage) return 'voltage-too-high';
  }
  if (deed.startsWith('link-')) {
    if (of.voltage.known !== 'volts') return 'voltage-unknown';
    if (candidates.assumed.includes('circuit')) return 'circuit-not-declared';
  }
  // A test lead on a circuit above the limit is no work for a guide on paper.
  if (isMeterDeed(deed) && of.voltage.known === 'volts' && of.voltage.volts > highestPlugVoltage)
    return 'voltage-too-high';
  if (isMeterDeed(deed) && of.voltage.known === 'told-unknown') return 'voltage-unknown';
  const hasStop = machine.inputs.some(({ switches }) => switches.some(({ duty }) => duty.includes('stop')));
  if (kindOf(deed) === 'energised' && hasStop && !order.stopProved) return 'stop-not-proved';
  if (deed === 'axis' && of.axis === undefined) return 'out-of-reach';
  return undefined;
}

const kindOf = (deed: DeedName): Kind | undefined => deeds.find(({ name }) => name === deed)?.kind;
const atTheSwitch: readonly DeedName[] = [
  'unplug-switch',
  'link-switch',
  'ohms-signal-core',
  'ohms-common-core',
  'ohms-signal-to-return',
  'ohms-signal-to-plus',
  'ohms-contact-closed',
  'ohms-contact-open',
  'volts-sensor-supply',
  'volts-sensor-output',
  'tug',
  'blades',
  'face',
];
const byHand: readonly DeedName[] = [
  'press',
  'tap',
  'carriage',
  'lever',
  'flex',
  'lamp',
  'gap',
  'bracket',
  'clip',
  'volts-terminal-closed',
  'volts-terminal-open',
  'amps-closed',
  'amps-open',
];
const isPlugged = (deed: DeedName): boolean => /^(?:unplug|link|ohms)-/.test(deed);

/** What the two terminals are called that a link joins: those that the closed contact would join, and no others. */
export function linkAt(
  at: PlugEnd,
  { of, scene, wiring }: Pick<Site, 'of' | 'scene' | 'wiring'>,
): readonly [string, string] {
  const isToGround = wiring.template.joins === '0 V';
  const other = isToGround ? '0 V' : '+';
  if (at === 'switch') return ['the signal core', isToGround ? 'the 0 V core' : 'the + core'];
  const terminal = inputOf(scene.machine, of.input)?.terminal;
  return [terminal === undefined ? 'the signal terminal' : `terminal ${terminal}`, other];
}

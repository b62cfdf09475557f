import type { SeparatorName, SituationName } from '../model/seek-situations.ts';
import { listed } from './figures.ts';

/** What a seek can really have been, as the end of "it fits: ...". */
export const situationWords = {
  healthy: 'a sound axis',
  'direction-inverted': 'the direction setting of this axis is inverted',
  'motor-coil-reversed': 'one coil of the motor is connected the other way round',
  'seeks-wrong-end': 'the setting for the home end names the wrong end',
  mirrored:
    'both the direction and the home end are set wrong, so that the two cancel and the parts come out mirrored',
  'motor-stutters': 'the motor buzzes without turning: a coil is open, or wires of two coils are mixed',
  'motor-stands-still': 'the motor has no power, or its drive is not enabled or in fault',
  'inputs-crossed': 'the wires of two switches are crossed',
  'motors-crossed': 'the plugs of two motors are crossed',
  'stands-on-switch': 'the axis stood on its switch',
  'input-stuck': 'the input stays operated with nothing on the switch',
  'beyond-the-dog': 'the axis stood beyond the end of its dog, past the switch',
  'trip-not-taken':
    'the axis came to its switch and no trip was taken from it: contact or wire dead, filter too slow, or dog too short',
  'zeroed-in-place': 'the controller homes this axis without a switch',
  'no-reversal': 'no back-off is set, or the trip stopped the machine as a limit',
  'does-not-turn-back': 'the direction signal to the drive is broken, so that the motor turns one way only',
  'does-not-clear': 'the back-off is shorter than the way the switch needs to let go, or the switch sticks',
  'trip-lost-to-bounce': 'the contact bounces, and the controller takes the bounce for a second trip',
  'trip-between-reports': 'the trip was shorter than the time between two reports',
  'noise-trip': 'the input tripped by electrical noise before the axis was there',
  'seek-too-short': 'the longest seek or the travel is set shorter than the way to the switch',
  'stopped-on-the-way': 'something stands in its way, or its switch is not where the file says it is',
  'loses-steps': 'the motor loses steps, or a coupling, pulley or grub screw slips',
  'switch-wanders':
    'the dog or the bracket of the switch is loose, or the switch itself trips here and there',
  'scale-off': 'the steps for a millimetre are set wrong',
  'homes-at-far-end': 'it homed at the switch of its other end, which shares the input',
  'other-axis-on-input': 'another axis stands on a switch that shares the input',
  'blocked-elsewhere': 'a limit of another axis or end is operated and keeps the controller from moving',
  'gantry-motors-fight':
    'the two motors of the gantry do not go together: one turns the wrong way or not at all',
  'gantry-sides-crossed': 'the switches of the two sides of the gantry are crossed',
  'gantry-switch-dead': 'the switch of one side of the gantry never answered',
  'gantry-inputs-joined': 'the switches of both sides are joined on one wire',
  'gantry-offset-moved': 'one side of the gantry stands ahead of the other, or has lost steps against it',
  'rotary-either-side': 'the turning axis comes to its mark from either side',
  'seeks-the-work': 'the axis is set to home towards the work',
  'touches-the-work': 'a probe touched the work or a plate',
  'wrong-order': 'the axes home in an order in which tool and clamps may meet',
  crawls: 'the approach is set to the slow speed, or the units of its speed are wrong',
  'not-reported': 'the controller reported no positions while it homed',
  'backs-into-a-switch': 'the back-off is so long that it runs into another switch',
  overruns: 'the axis needs more way to stop than the switch can be pressed in',
  'sags-at-start': 'the axis drops a little as it sets off, before its drive holds',
  'reference-lost': 'the reference was lost after the last homing',
  'zero-not-set': 'the homing ended without setting its zero',
} satisfies Record<SituationName, string>;

/** What would have to be learnt, as the end of "what would tell them apart: ...". */
export const separatorWords = {
  seen: 'a stream without holes',
  atStart: 'the switch at the start',
  way: 'the commanded way',
  trip: 'which input trips',
  after: 'what the axis does after the trip',
  clear: 'whether the switch lets go',
  slow: 'a second, slow trip',
  edges: 'how often the input changes at one trip',
  zero: 'whether the zero is set',
  ends: 'how the motion ends',
  endedBy: 'a seek that nobody stops',
  speed: 'the speed of the approach',
  ran: 'the commanded way beside the travel of the axis',
  forWork: 'the way the tool is sent',
  order: 'the order in which the axes set off',
  elsewhere: 'the other switches',
  runOn: 'how far the switch can be pressed in, beside the way the axis needs to stop',
  sides: 'the trips of both sides',
  since: 'a new homing',
  trips: 'where it trips in three seeks and more',
  lengths: 'the lengths of two seeks from unlike starts',
  square: 'how far apart the two sides trip in homing after homing',
  bothSides: 'seeks from either side',
  map: 'a press of each switch by hand',
  place: 'three trips of a proved switch in one place',
  tool: 'which way the tool goes over the work',
  movedAxis: 'which axis really moved',
  reached: 'whether the axis came to its switch',
  standing: 'whether it stands past its switch or short of it',
  buzzed: 'whether the motor buzzes',
  cameBack: 'whether the axis really came back off its switch',
  racked: 'whether the gantry was pulled out of square',
  touched: 'whether anything stands on the switch',
  measured: 'a measured length',
  gauge: 'a dial gauge against the axis, homed again and again',
  sagged: 'whether the axis drops as it sets off',
} satisfies Record<SeparatorName, string>;

/** "It fits: a; b. What would tell them apart: c." An empty text where nothing is left open. */
export function candidatesText(
  candidates: readonly SituationName[],
  apart: readonly SeparatorName[],
): string {
  if (candidates.length === 0) return '';
  const fits = candidates.map((each) => situationWords[each]);
  const cause =
    fits.length === 1
      ? ` What was seen fits: ${fits.join('')}.`
      : ` What was seen fits: ${fits.join('; or ')}.`;
  if (candidates.length < 2) return cause;
  return apart.length === 0
    ? `${cause} Nothing seen from here tells these apart.`
    : `${cause} What would tell them apart: ${listed(apart.map((each) => separatorWords[each]))}.`;
}

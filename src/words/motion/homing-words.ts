import { type HomingFacts, type HomingPart, homingParts, type SpeedFacts } from '../../model/homing-facts.ts';
import type { Between } from '../../model/motion-facts.ts';
import { counted, listed } from '../figures.ts';
import { spanText, speedText, wayText } from './lengths.ts';

export const partWords = {
  'off the switch': 'off the switch it stood on',
  approach: 'approach',
  trip: 'trip',
  stop: 'stop',
  'back-off': 'back off',
  clear: 'switch frees',
  'slow approach': 'slow approach',
  'slow trip': 'second trip',
  release: 'release',
  'slow clear': 'switch frees again',
  'zero set': 'zero set',
} as const satisfies Record<HomingPart, string>;

/** Not every homing has these: a switch that was free, a controller that touches once. */
const notAlways: readonly HomingPart[] = [
  'off the switch',
  'slow approach',
  'slow trip',
  'release',
  'slow clear',
];

export const zeroWords = {
  jump: 'seen: the numbers jumped where zero was set',
  agrees: 'ended at the home value without a jump: the numbers agreed already, or by chance',
  'not-seen': 'not seen',
} as const satisfies Record<HomingFacts['zero'], string>;

export const reactionWords = {
  acted: 'the controller acted on the trip: it stopped or turned',
  'not-acted-on': 'the controller reported the trip and went on: reported is not acted on',
  'not-tested': 'not tested: what the controller does about a trip was not seen',
} as const satisfies Record<HomingFacts['reaction'], string>;

export const seenText = ({ seen }: HomingFacts): string =>
  seen.length === 0 ? 'nothing' : seen.map((part) => partWords[part]).join(', ');

export function unseenText({ seen }: HomingFacts): string {
  const unseen = homingParts.filter((part) => !seen.includes(part) && !notAlways.includes(part));
  return unseen.length === 0 ? 'nothing of it' : listed(unseen.map((part) => partWords[part]));
}

/** Everything measured of one homing, line by line; what was not seen is left out. */
export function homingFields(facts: HomingFacts): readonly (readonly [string, string])[] {
  const { unit, way, order } = facts;
  const span = (label: string, value: Between | undefined) =>
    value === undefined ? [] : [[label, spanText(value, unit)] as const];
  const speed = (label: string, value: SpeedFacts | undefined) =>
    value === undefined ? [] : [[label, speedText(value.value, unit)] as const];
  return [
    ['Watched', `${counted(facts.cycles, 'homing')}; figures of the last whole one`],
    ['Switch', facts.input],
    ...(way === undefined ? [] : [['Commanded way', wayText(way)] as const]),
    ['Seen', seenText(facts)],
    ['Not seen', unseenText(facts)],
    ...speed('Approach speed', facts.approachSpeed),
    ...accelerated(facts),
    ...span('Way of the approach', facts.approachWay),
    ...span('Trip', facts.trip),
    ...span('Ran on after the trip', facts.stopDistance),
    ...span('Backed off', facts.backOff),
    ...span('Trip to release of the switch', facts.differential),
    ...span('Second side trips from the first', facts.sideOffset),
    ...askew(facts),
    ...speed('Slow approach speed', facts.slowSpeed),
    ...span('Second trip', facts.slowTrip),
    ...span('Release', facts.release),
    ['Zero', zeroWords[facts.zero]],
    ...span('Zero shifted by', facts.shift),
    ['Reaction', reactionWords[facts.reaction]],
    ...(order === undefined ? [] : [['Set off in this order', order.join(', ')] as const]),
  ];
}

const accelerated = ({ acceleration, unit }: HomingFacts): readonly (readonly [string, string])[] =>
  acceleration === undefined
    ? []
    : [
        [
          'Acceleration',
          `${acceleration.low.toFixed(0)} to ${acceleration.high.toFixed(0)} ${unit === 'mm' ? 'mm' : '°'}/s², its ramps taken to be alike`,
        ],
      ];

const askew = ({ squareness }: HomingFacts): readonly (readonly [string, string])[] =>
  squareness === undefined
    ? []
    : [['Out of square by that', `${spanText(squareness, 'degrees')} for each metre between the sides`]];

export const homingSentences = {
  none: 'NOT TESTED. Approach, trip, back off, slow approach and release were not watched; trip points, their scatter and the direction of homing are unknown.',
  repeatNone: 'NOT TESTED. How well an axis comes back to its switch was not watched.',
  stoppingNone: 'NOT TESTED. The way from a trip to a standstill was neither watched nor computed.',
} as const;

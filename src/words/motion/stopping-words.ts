import type { StoppingFacts } from '../../model/stopping-facts.ts';
import { counted } from '../figures.ts';
import { bare, lengthText, spanText, speedText } from './lengths.ts';

const stoppingSays = {
  fits: 'It stops within the room there is.',
  overruns: 'It does not stop within the room there is.',
  unknown: 'Whether it stops within the room there is cannot be said.',
} as const satisfies Record<StoppingFacts['says'], string>;

/** What is said of a stop; of one that nobody watched, that it is arithmetic. */
export const stoppingText = ({ says, observed }: StoppingFacts): string =>
  observed === undefined && says !== 'unknown'
    ? `${stoppingSays[says]} That is computed from the numbers told; no stop was watched.`
    : stoppingSays[says];

const roomWords = {
  overtravel: 'the share of the switch’s overtravel that a stop may use',
  'hard stop': 'up to a millimetre before solid metal',
} as const;

/** Every figure of a stop, line by line. */
export function stoppingFields(facts: StoppingFacts): readonly (readonly [string, string])[] {
  const { unit, speed, acceleration, reaction, computed, observed, room, over, fastest, halved } = facts;
  const length = (label: string, value: number | undefined, why = '') =>
    value === undefined ? [] : [[label, `${lengthText(value, unit)}${why}`] as const];
  const numbers = [
    speed === undefined ? '' : `speed ${speedText(speed, unit)}`,
    acceleration === undefined ? '' : `braking ${bare(acceleration)} ${unit === 'mm' ? 'mm' : '°'}/s²`,
    reaction === undefined ? '' : `reaction ${bare(reaction)} ms`,
  ].filter((part) => part !== '');
  return [
    ['Numbers', numbers.length === 0 ? 'not known' : numbers.join('; ')],
    ...length('Computed, v·t + v²/2a', computed),
    [
      'Seen',
      observed === undefined
        ? 'no stop was watched'
        : `${spanText(observed, unit)}, the longest of ${counted(facts.stops, 'stop')}`,
    ],
    ...(facts.worseThanDeclared
      ? [
          [
            'Against the numbers',
            'longer than they allow: braking or reaction is worse than declared',
          ] as const,
        ]
      : []),
    ...length('Overtravel of the switch', facts.overtravel),
    ...length('Trip to hard stop', facts.toHardStop),
    ...(room === undefined
      ? [['Room', 'not known'] as const]
      : [['Room', `${lengthText(room.mm, unit)}: ${roomWords[room.from]}`] as const]),
    ...length('Too far by', over),
    ...(fastest === undefined
      ? []
      : [['Highest approach speed that still stops in time', speedText(fastest, unit)] as const]),
    ...length('Half the speed would need', halved),
  ];
}

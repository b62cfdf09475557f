import type { Between } from '../../model/motion-facts.ts';
import type { RepeatFacts } from '../../model/repeat-facts.ts';
import { counted, timeText } from '../figures.ts';
import { bare, fineText, lengthText, spanText } from './lengths.ts';

/** The definition stands beside its number: some print 2 s under the same name. */
export const definitionWords = {
  'ISO 230-2 unidirectional: 4 s':
    'unidirectional repeatability as ISO 230-2 defines it: four times the standard deviation of runs from one side',
} as const satisfies Record<RepeatFacts['definition'], string>;

export const repeatSays = {
  within: (tolerance: string) => `Within ${tolerance}, from one end of the doubt to the other.`,
  beyond: (tolerance: string) => `Wider than ${tolerance}, even where the doubt is counted in its favour.`,
  'too-coarse': (tolerance: string) =>
    `This stream cannot tell whether ${tolerance} is kept: its own blur is too wide.`,
  'too-few': () => 'Fewer than three runs say nothing about repeating.',
} as const satisfies Record<RepeatFacts['says'], (tolerance: string) => string>;

export const sourceWords = {
  commanded:
    'Trip places are commanded positions: they show the switch and the input, not lost steps nor a slipping coupling.',
  measured: 'Read from a gauge at each run.',
} as const satisfies Record<RepeatFacts['source'], string>;

/** Every figure with what it means, line by line. */
export function repeatFields(facts: RepeatFacts): readonly (readonly [string, string])[] {
  const { unit, deviation95, mean95, unbiased, lagOne, outlier, drift, period } = facts;
  const fine = (value: number) => fineText(value, unit);
  const between = ({ low, high }: Between) => `between ${fine(low)} and ${fine(high)}`;
  return [
    [
      'Runs',
      `${facts.n}, ${facts.startPoints === 0 ? 'where they began not seen' : `from ${counted(facts.startPoints, 'start point')}`}`,
    ],
    [
      'Mean trip',
      `${fine(facts.mean)}${mean95 === undefined ? '' : `, the true one ${between(mean95)} (95 %, Student)`}`,
    ],
    ['Standard deviation s', `${fine(facts.s)} (n − 1)`],
    // Where both read alike, it says nothing.
    ...(unbiased === undefined || fine(unbiased) === fine(facts.s)
      ? []
      : [
          [
            'The same, for so few runs',
            `${fine(unbiased)} (s/c4): s of few runs falls short of the true one on average`,
          ] as const,
        ]),
    ...(deviation95 === undefined
      ? []
      : [
          [
            'True standard deviation, 95 %',
            `${between(deviation95)} (chi-square, runs taken as normal and independent)`,
          ] as const,
        ]),
    ...(lagOne === undefined
      ? []
      : [
          [
            'Runs depend on each other',
            `each goes with the one before it (correlation ${lagOne.toFixed(2).replace('-', '−')}, more than chance at 5 %): the intervals are narrower than they should be`,
          ] as const,
        ]),
    ['Range', fine(facts.range)],
    ['Repeatability', `${fine(facts.unidirectional)}: ${definitionWords[facts.definition]}`],
    [
      'Could be told apart at all',
      `${fine(facts.blur)}${period === undefined ? '' : `, with a report every ${timeText(period)}`}`,
    ],
    ...(facts.periodNeeded === undefined
      ? []
      : [
          [
            'To tell it at this speed',
            `a report every ${timeText(facts.periodNeeded)} at least, or a slower second approach`,
          ] as const,
        ]),
    ...(facts.countWanders === undefined
      ? []
      : [['Count wanders', `by ${fine(facts.countWanders)}, the gauge does not: steps were lost`] as const]),
    ...(outlier === undefined
      ? []
      : [
          [
            'Does not belong to the rest',
            `run ${outlier.index + 1}, ${lengthText(outlier.value, unit)} (Grubbs, 5 %)`,
          ] as const,
        ]),
    ...(drift === undefined
      ? []
      : [['Drifts', `${fine(drift.slope)} from run to run: more than chance at 5 %`] as const]),
  ];
}

/** The drawing in words. */
export function repeatText({ axis, unit, runs }: RepeatFacts): string {
  const places = runs.map(({ place, gauge }, i) =>
    gauge === undefined ? `${i + 1}: ${spanText(place, unit)}` : `${i + 1}: ${bare(gauge)} on the gauge`,
  );
  return `${axis}, trip place of each run: ${places.join('; ')}.`;
}

import type { ScaleCause, ScaleFacts } from '../../model/scale-facts.ts';
import { bare, fineText, lengthText, wayText } from './lengths.ts';

export const scaleSays = {
  true: 'Commanded lengths are real ones, within what is accepted.',
  off: 'Commanded lengths are not real ones.',
  'too-coarse': 'These readings cannot tell: measure longer lengths, or better.',
} as const satisfies Record<ScaleFacts['says'], string>;

type Told = { readonly [Kind in ScaleCause['kind']]: (cause: Extract<ScaleCause, { kind: Kind }>) => string };

const causeWords: Told = {
  microsteps: ({ set, real }) => `microsteps: set for ${set}, the drive makes ${real}`,
  'screw-starts': ({ starts }) => `a screw with ${starts} starts, counted as one`,
  lead: ({ set, real }) => `lead of the screw: set ${set} mm, real ${real} mm`,
  'diameter-for-radius': () => 'diameter counted for radius, or the other way round',
  'step-angle': () => 'motor of 0.9° for one of 1.8°, or the other way round',
  'inch-for-mm': () => 'inches for millimetres, or the other way round',
  'inch-pitch': ({ set, real }) => `inch pitch: set ${set} mm, real ${real} mm`,
  'forgotten-pi': () => 'a pitch counted without, or with, π',
  teeth: ({ set, real }) => `teeth of a pulley or pinion: set ${set}, real ${real}`,
  gear: ({ numerator, denominator }) => `a gear of ${numerator} to ${denominator} left out or turned round`,
};

export const causeText = (cause: ScaleCause): string =>
  (causeWords[cause.kind] as (cause: ScaleCause) => string)(cause);

const perMille = (share: number): string => `${(share * 1000).toFixed(1)} ‰`;
/** Steps as controllers take them: three places. */
const stepsText = (steps: number): string => steps.toFixed(3);

/** Every figure of scale and backlash, line by line. */
export function scaleFields(facts: ScaleFacts): readonly (readonly [string, string])[] {
  const { unit, backlash, hasBacklash, byWay, waysDiffer, steps, correctedSteps, causes } = facts;
  const per = unit === 'mm' ? 'mm' : 'degree';
  return [
    [
      'Measured over commanded',
      `${facts.ratio.toFixed(5)}, known to ${perMille(facts.doubt)}; accepted is ${perMille(facts.accepted)} off`,
    ],
    ...(backlash === undefined
      ? [['Backlash', 'not known: it takes moves with and without a reversal before them'] as const]
      : [
          [
            'Backlash, apart from scale',
            `${fineText(backlash, unit)}${hasBacklash === false ? ': no more than the readings could err' : ''}`,
          ] as const,
        ]),
    ...(byWay === undefined
      ? []
      : [
          [
            'Each way alone',
            `positive ${byWay.positive.toFixed(5)}, negative ${byWay.negative.toFixed(5)}${waysDiffer ? ': they differ by more than the readings could; something slips, or steps are lost' : ''}`,
          ] as const,
        ]),
    ['Every length reads', `${fineText(facts.offset, unit)} off, where the tape was held`],
    ['Furthest from the fit', fineText(facts.worst, unit)],
    ...(facts.says !== 'off'
      ? []
      : [
          [
            'Likely cause',
            causes.length === 0
              ? 'no mistake with whole numbers fits: screw, belt or rack are a little off, or the measurement is'
              : causes.slice(0, 3).map(causeText).join('; or '),
          ] as const,
        ]),
    ...(steps === undefined ? [] : [[`Steps per ${per}, set now`, stepsText(steps)] as const]),
    ...(correctedSteps === undefined || facts.says !== 'off'
      ? []
      : [[`Steps per ${per}, corrected`, stepsText(correctedSteps)] as const]),
  ];
}

export const scaleRow = (
  { commanded, measured, way, afterReversal }: ScaleFacts['runs'][number],
  unit: ScaleFacts['unit'],
): readonly string[] => [
  lengthText(commanded, unit),
  lengthText(measured, unit),
  bare(measured - commanded),
  wayText(way),
  afterReversal ? 'yes' : 'no',
];

export const scaleSentences = {
  none: 'NOT TESTED. No commanded length was measured: lengths, speeds and accelerations may be wrong by one and the same factor.',
} as const;

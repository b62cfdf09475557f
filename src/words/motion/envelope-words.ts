import type { EnvelopeEnd, EnvelopeFacts, ProgramDoubt } from '../../model/envelope-facts.ts';
import type { End } from '../../model/machine.ts';
import { bare, lengthText } from './lengths.ts';

export const stopFromWords = {
  configured: 'on file',
  told: 'told',
  measured: 'measured',
} as const satisfies Record<NonNullable<EnvelopeEnd['stopFrom']>, string>;

export const tripFromWords = {
  configured: 'on file',
  commanded: 'seen in the stream',
} as const satisfies Record<NonNullable<EnvelopeEnd['tripFrom']>, string>;

export const endWords = { negative: 'negative end', positive: 'positive end' } as const satisfies Record<
  End,
  string
>;

/** What is known of one end, item by item, from the outside in. */
export function endItems(facts: EnvelopeFacts, end: End): readonly (readonly [string, string])[] {
  const { stop, stopFrom, trip, tripFrom, input } = facts.ends[end];
  const { unit } = facts;
  const soft = facts.soft?.[end === 'positive' ? 1 : 0];
  const home = facts.homes === end ? facts.homeValue : undefined;
  const from = (words: string | undefined) => (words === undefined ? '' : `, ${words}`);
  const items: (readonly [string, string | undefined])[] = [
    [
      'Hard stop',
      stop === undefined
        ? undefined
        : `${lengthText(stop, unit)}${from(stopFrom && stopFromWords[stopFrom])}`,
    ],
    [
      input === undefined ? 'Switch trips' : `${input} trips`,
      trip === undefined
        ? undefined
        : `${lengthText(trip, unit)}${from(tripFrom && tripFromWords[tripFrom])}`,
    ],
    ...(facts.homes === end
      ? [['Stands after homing', home === undefined ? undefined : lengthText(home, unit)] as const]
      : []),
    ['Soft limit', soft === undefined ? undefined : lengthText(soft, unit)],
  ];
  return items.map(([label, value]) => [label, value ?? 'not known'] as const);
}

export const envelopeLabels = {
  stop: (at: number) => `hard stop ${bare(at)}`,
  trip: (at: number, input: string | undefined) => `${input ?? 'switch'} trips ${bare(at)}`,
  soft: (at: number) => `soft limit ${bare(at)}`,
  home: (at: number) => `after homing ${bare(at)}`,
  margin: (length: number) => `a soft limit must lie this far inside: ${bare(length)}`,
  room: (length: number) => `a stop from rapid takes ${bare(length)}`,
  backOff: (length: number) => `back-off ${bare(length)}`,
  unknown: 'nothing is known of this end',
  outside: 'outside',
} as const;

/** The drawing in words. */
export function envelopeText(facts: EnvelopeFacts): string {
  const { axis, unit, usable, origins, parts } = facts;
  const ends = (['negative', 'positive'] as const).map((end) => {
    const items = endItems(facts, end).map(([label, value]) => `${label.toLowerCase()} ${value}`);
    return `${endWords[end]}: ${items.join('; ')}`;
  });
  const work = origins.map(
    ({ system, at, active }) => `zero of ${system}${active ? ' (active)' : ''} at ${lengthText(at, unit)}`,
  );
  const needed = parts.map(
    ({ system, low, high }) =>
      `the program in ${system} from ${lengthText(low, unit)} to ${lengthText(high, unit)}`,
  );
  const left = usable === undefined ? [] : [`${lengthText(usable, unit)} to work in`];
  return `${axis}, machine coordinates. ${[...ends, ...left, ...work, ...needed].join('. ')}.`;
}

export const doubtWords = {
  formula: 'a formula',
  parameter: 'a parameter',
  subprogram: 'a subprogram',
  'stray-characters': 'characters that are no word',
  'open-comment': 'a comment that does not end',
  'unknown-code': 'a code that is not known',
  'may-be-skipped': 'skipped where block delete is set; taken as run',
  'from-unknown-place': 'starts from a place that is not known',
  'arc-without-centre': 'an arc without a centre',
  'arc-radii-differ': 'an arc whose radii differ',
  'cycle-in-other-plane': 'a cycle in another plane',
  'cycle-without-depth': 'a cycle without a depth',
  'stored-point': 'goes to a stored point',
  'changes-offset': 'changes an offset',
  'cutter-compensation': 'cutter compensation: the tool runs beside the path',
  probe: 'a probing move: where it stops is up to the work',
} as const satisfies Record<ProgramDoubt, string>;

export const envelopeSentences = {
  none: 'NOT TESTED. Hard stops, trip points, machine zero, soft limits and work offsets were not compared.',
  key: 'Machine coordinates. The strip shows the whole axis; below it each end is drawn to its own scale. Hatched: solid metal. Filled triangle: the switch trips, on the way it points to. Broken line: soft limit. Circle: where the axis stands after homing.',
} as const;

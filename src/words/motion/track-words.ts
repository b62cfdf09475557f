import type { AxisTrack, Between, TrackTrip } from '../../model/motion-facts.ts';
import { counted, timeText } from '../figures.ts';
import { bare, lengthText, secondsSpan, spanText, wayText } from './lengths.ts';

export const trackLabels = {
  seek: 'First seek',
  homing: 'Homing',
  repeat: 'Homing, for repeatability',
  stopping: 'Stop',
  move: 'Move',
} as const satisfies Record<AxisTrack['label'], string>;

export type TrackEventKind = 'trip' | 'wrong-trip' | 'free' | 'reversal' | 'zero' | 'alarm';

/** Something that happened on the way, in the order of the clock. */
export interface TrackEvent {
  readonly kind: TrackEventKind;
  readonly t: Between;
  readonly position?: Between | undefined;
  readonly input?: string | undefined;
  /** Coordinate before and after, where the numbers were set anew. */
  readonly set?: readonly [number, number] | undefined;
}

/** Trips, reversals, the new zero and the alarm of a track, in the order of the clock. */
export function eventsOf({ trips, reversals, zeroSet, alarm }: AxisTrack): readonly TrackEvent[] {
  const point = (value: number): Between => ({ low: value, high: value });
  const events: TrackEvent[] = [
    ...trips.map(({ input, t, position, ...trip }) => ({ kind: tripKind(trip), t, position, input })),
    ...reversals.map(({ t, position }) => ({
      kind: 'reversal' as const,
      t: point(t),
      position: point(position),
    })),
  ];
  if (zeroSet) events.push({ kind: 'zero', t: point(zeroSet.t), set: [zeroSet.before, zeroSet.after] });
  if (alarm) events.push({ kind: 'alarm', t: point(alarm.t) });
  return events.sort((one, other) => one.t.low - other.t.low || one.t.high - other.t.high);
}

const tripKind = ({ to, wanted }: Pick<TrackTrip, 'to' | 'wanted'>): TrackEventKind =>
  to === 'free' ? 'free' : wanted ? 'trip' : 'wrong-trip';

export function eventText({ kind, input = '', set }: TrackEvent): string {
  const [before = 0, after = 0] = set ?? [];
  const told = {
    trip: `${input} trips`,
    'wrong-trip': `${input} trips: not the switch of this way`,
    free: `${input} frees`,
    reversal: 'turns back',
    zero: `numbers set anew: ${bare(before)} becomes ${bare(after)}`,
    alarm: 'the person was told to stop it',
  } satisfies Record<TrackEventKind, string>;
  return told[kind];
}

export const eventPlace = ({ position }: TrackEvent, unit: AxisTrack['unit']): string =>
  position === undefined ? '' : spanText(position, unit);

/** "Expected way: negative, toward its switch." */
export const expectedText = ({ expected }: AxisTrack): string =>
  expected === undefined
    ? 'Which way leads to its switch was not known.'
    : `Expected way: ${wayText(expected)}, toward its switch.`;

/** How far it went and how long it took; what happened on the way stands in a table beside it. */
export function trackWay({ axis, unit, points, samples }: AxisTrack): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return `${axis}: no position was reported.`;
  return `${axis} from ${lengthText(first.position, unit)} to ${lengthText(last.position, unit)} in ${timeText(last.t)}, ${counted(samples, 'report')}.`;
}

/** The drawing in words, for those who see neither it nor the table. */
export function trackText(track: AxisTrack): string {
  const { unit } = track;
  const events = eventsOf(track).map((event) => {
    const place = eventPlace(event, unit);
    return `${eventText(event)} at ${secondsSpan(event.t)} s${place === '' ? '' : `, ${place}`}`;
  });
  return `${trackWay(track)} ${expectedText(track)}${events.length === 0 ? '' : ` ${sentence(events.join('; '))}.`}`;
}

const sentence = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1);

export const motionSentences = {
  none: 'NOT TESTED. No motion was watched: which way each axis runs, and what its switches do on the way, is unknown.',
  commanded:
    'Positions are what the controller commanded, not where the tool was: a motor that stalls or turns the wrong way draws the same line.',
  closeUp: 'The same, from the first event to the last, drawn larger.',
  key: 'Filled square: its switch trips. Cross: another switch trips. Open square: a switch frees. Open circle: it turns back. Diamond: the numbers are set anew. Bar: the person was told to stop it. A grey band is the time between the last report before a change and the first after it. The arrow at the right is the expected way.',
} as const;

import type { EdgeReading, StatusReading, UnreadableWhy, VoltsReading } from '../../model/reading.ts';
import { type Millis, type Mm, mm, type Volts, volts } from '../../model/units.ts';
import type { Declaration } from './declarations.ts';
import type { EdgeSentence, StatusSentence, VoltsSentence } from './sentence.ts';
import type { Steps } from './steps.ts';

interface Scene {
  readonly arrived: Millis;
  readonly declared: Declaration;
  readonly clock: Steps;
  /** The one before the report; a restart raises it. */
  readonly segment: number;
}

/** The reading, or why the report is not believed. */
type Found =
  | { readonly reading: StatusReading | EdgeReading | VoltsReading; readonly restarted: boolean }
  | { readonly why: UnreadableWhy };

/** A status whose count of levels has been settled with the declaration. */
export function readingOfStatus(status: StatusSentence, { arrived, declared, clock, segment }: Scene): Found {
  const positions = perItem(status.positions, declared.axes.length);
  if (positions === undefined) return { why: 'wrong-field-count' };
  const taken = clock.take({ kind: 'status', seq: status.seq, clock: status.ms, arrived });
  if (taken.kind === 'out-of-step') return { why: 'out-of-step' };
  const reading = statusReading(status, positions, declared, arrived, taken.at, segment, taken.lost);
  return { reading, restarted: taken.kind === 'restarted' };
}

/** The reading of a status that is believed. `positions` as declared, one an axis. */
export function statusReading(
  { activity, levels, active }: StatusSentence,
  positions: readonly (number | undefined)[],
  { inputs, axes, units }: Declaration,
  arrived: Millis,
  at: Millis,
  segment: number,
  lost: number,
): StatusReading {
  return {
    kind: 'status',
    arrived,
    at,
    segment,
    lost,
    inputs,
    axes,
    activity,
    levels: levels.length > 0 ? levels : inputs.map(() => '?' as const),
    active: active.length > 0 ? active : inputs.map(() => '?' as const),
    positions:
      units === 'mm'
        ? (positions as readonly (Mm | undefined)[])
        : positions.map((place) => (place === undefined ? undefined : inMm(place))),
  };
}

export function readingOfEdge(edge: EdgeSentence, { arrived, declared, clock, segment }: Scene): Found {
  const input = declared.inputs[edge.input];
  if (input === undefined) return { why: 'wrong-number' };
  const taken = clock.take({ kind: 'edge', seq: edge.seq, clock: edge.us, arrived });
  if (taken.kind === 'out-of-step') return { why: 'out-of-step' };
  const reading = {
    kind: 'edge' as const,
    arrived,
    at: taken.at,
    segment,
    lost: taken.lost,
    input,
    level: edge.level,
  };
  return { reading, restarted: false };
}

export function readingOfVolts(report: VoltsSentence, { arrived, declared, clock, segment }: Scene): Found {
  const { inputs } = declared;
  const values = perItem(report.millivolts, inputs.length);
  if (values === undefined) return { why: 'wrong-field-count' };
  const at = clock.place(report.ms, arrived);
  if (at === undefined) return { why: 'out-of-step' };
  const inVolts = values.map((mV): Volts | undefined => (mV === undefined ? undefined : volts(mV / 1000)));
  return { reading: { kind: 'volts', arrived, at, segment, inputs, volts: inVolts }, restarted: false };
}

/** One value an item. No fields at all, or a single empty one, say that none is reported. */
export function perItem(
  fields: readonly (number | undefined)[],
  count: number,
): readonly (number | undefined)[] | undefined {
  if (fields.length === count) return fields;
  const none = fields.length === 0 || (fields.length === 1 && fields[0] === undefined);
  return none ? new Array<undefined>(count).fill(undefined) : undefined;
}

/** An inch is 25.4 mm exactly (ISO 31-1). */
const inMm = (inches: number): Mm => mm(inches * 25.4);

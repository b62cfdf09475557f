import type { Axis, InputName } from '../../model/machine.ts';
import type { AxisTrack, TrackPoint, TrackTrip } from '../../model/motion-facts.ts';
import type { Window } from '../../model/procedure.ts';
import { type Millis, ms } from '../../model/units.ts';
import type { HomingCycle } from '../homing/cycle.ts';
import { legsOf } from '../homing/legs.ts';
import { inputEdges } from '../motion/edges.ts';
import type { Motion } from '../motion/motion.ts';
import type { Direction } from '../motion/runs.ts';
import type { State } from '../signal/track.ts';

/** More points than this no drawing shows. */
const mostPoints = 300;

export interface TrackOf {
  readonly axis: Axis;
  readonly label: AxisTrack['label'];
  readonly window: Window;
  readonly motion: Motion;
  readonly rest: Readonly<Record<InputName, State>>;
  /** Inputs that this motion should reach, and others to be drawn. */
  readonly wanted: readonly InputName[];
  readonly others: readonly InputName[];
  readonly expected: Direction | undefined;
  readonly cycle?: HomingCycle | undefined;
  /** Host clock of the report that raised an alarm. */
  readonly alarmed?: Millis | undefined;
}

/** One motion reduced to what a drawing needs; undefined where no position was reported. */
export function axisTrackOf(of: TrackOf): AxisTrack | undefined {
  const { axis, label, window, motion } = of;
  const { samples } = motion;
  const [first] = samples;
  if (!first) return undefined;
  const since = (at: Millis) => ms(at - first.at);
  const alarm = samples.find(({ arrived }) => arrived === of.alarmed);
  return {
    axis: axis.letter,
    unit: axis.kind === 'rotary' ? 'degrees' : 'mm',
    label,
    from: window.from,
    to: window.to,
    samples: samples.length,
    points: pointsOf(motion, since),
    trips: tripsOf(of, since),
    reversals: legsOf(motion)
      .slice(1)
      .flatMap(({ from }) => {
        const turn = samples[from];
        return turn ? [{ t: since(turn.at), position: turn.position }] : [];
      }),
    ...(of.expected !== undefined && { expected: of.expected }),
    ...zeroSetOf(of.cycle, motion, since),
    ...(alarm && { alarm: { t: since(alarm.at) } }),
  };
}

/** Evenly thinned, with every place where something begins, ends or leaps. */
function pointsOf({ samples, runs, jumps }: Motion, since: (at: Millis) => Millis): readonly TrackPoint[] {
  const stride = Math.max(1, Math.ceil(samples.length / mostPoints));
  const leaps = new Set(jumps.map(({ before }) => before + 1));
  const kept = new Set([
    0,
    samples.length - 1,
    ...runs.flatMap(({ from, to }) => [from, to]),
    ...[...leaps].flatMap((at) => [at - 1, at]),
  ]);
  return samples.flatMap(({ at, position }, i) => {
    if (i % stride !== 0 && !kept.has(i)) return [];
    return [{ t: since(at), position, ...(leaps.has(i) && { apart: true as const }) }];
  });
}

function tripsOf(
  { window, motion, rest, wanted, others }: TrackOf,
  since: (at: Millis) => Millis,
): readonly TrackTrip[] {
  return [...wanted, ...others]
    .flatMap((input) => inputEdges(window, input, motion, rest[input]))
    .map(({ input, to, at, where }) => ({
      input,
      to,
      t: { low: since(at.low), high: since(at.high) },
      ...(where && { position: where }),
      wanted: wanted.includes(input),
    }))
    .sort((a, b) => a.t.low - b.t.low);
}

function zeroSetOf(
  cycle: HomingCycle | undefined,
  { samples }: Motion,
  since: (at: Millis) => Millis,
): Pick<AxisTrack, 'zeroSet'> {
  if (cycle?.zero.kind !== 'jump') return {};
  const [before, after] = [samples[cycle.zero.after], samples[cycle.zero.after + 1]];
  if (!before || !after) return {};
  return { zeroSet: { t: since(after.at), before: before.position, after: after.position } };
}

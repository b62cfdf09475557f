import type { Finding } from '../../model/finding.ts';
import type { Machine } from '../../model/machine.ts';
import type { AxisWay, FrameFacts } from '../../model/motion-facts.ts';
import type { FirstMove, MotionKnown } from '../../model/procedure.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { type FrameMap, frameOf, type LinearAxis } from '../frame/frame.ts';
import type { SeekJudgement } from '../seek/judge.ts';
import { statusOf } from './status.ts';

/** What is known of the true way of one axis. */
export interface WayKnown {
  readonly axis: string;
  readonly judged: SeekJudgement | undefined;
  readonly first?: FirstMove | undefined;
}

const isLinear = (axis: string): axis is LinearAxis => axis === 'X' || axis === 'Y' || axis === 'Z';

/** The frame the axes span together, and the stop they were moved under where that was only told; undefined where there is nothing to say. */
export function judgeFrame(
  known: readonly WayKnown[],
  machine: Machine,
  motion: MotionKnown,
): Verdict | undefined {
  const linear = machine.axes.filter(
    ({ letter, kind }) => kind === 'linear' && isLinear(letter) && known.some(({ axis }) => axis === letter),
  );
  const ways = waysOf(known);
  const told: readonly Finding[] = motion.stop === 'told' ? [{ kind: 'stop-told' }] : [];
  if (linear.length < 2 && told.length === 0) return undefined;
  const frame = frameFacts(ways);
  const mirror: readonly Finding[] = frame.says === 'mirrored' ? mirrorsOf(ways) : [];
  const findings = [...mirror, ...told];
  const missing: readonly Missing[] =
    linear.length >= 2 && (ways.length < linear.length || !hasFrame(frame)) ? ['direction-not-known'] : [];
  const status = statusOf(findings);
  return {
    check: 'seek',
    subject: 'axes',
    status: missing.length > 0 && status !== 'failed' ? 'inconclusive' : status,
    evidence: ways.some(({ evidence }) => evidence === 'told') || ways.length === 0 ? 'told' : 'repeated',
    findings,
    missing,
    facts: linear.length < 2 ? {} : { frame },
    traces: [],
  };
}

function waysOf(known: readonly WayKnown[]): readonly AxisWay[] {
  return known.flatMap(({ axis, judged, first }): readonly AxisWay[] => {
    const other = first?.otherWay;
    if (other && isLinear(axis) && isLinear(other.axis) && first.commanded !== undefined) {
      const sign = (other.tool === 'positive') === (first.commanded === 1) ? 1 : -1;
      return [{ commanded: axis, axis: other.axis, sign, evidence: 'told' }];
    }
    if (!isLinear(axis) || !judged?.direction.known || judged.features.movedAxis === 'other') return [];
    const { sign, evidence } = judged.direction;
    return [{ commanded: axis, axis, sign, evidence }];
  });
}

function frameFacts(ways: readonly AxisWay[]): FrameFacts {
  const map: FrameMap = Object.fromEntries(
    ways.map(({ commanded, axis, sign }) => [commanded, { axis, sign }]),
  );
  const frame = frameOf(map);
  return 'determinant' in frame
    ? { ways, says: frame.kind, determinant: frame.determinant }
    : { ways, says: frame.kind };
}

const hasFrame = ({ determinant }: FrameFacts): boolean => determinant !== undefined;

/** What makes a frame left-handed: each axis that goes the other way, and each whose motor is another one's. */
const mirrorsOf = (ways: readonly AxisWay[]): readonly Finding[] =>
  ways.flatMap(({ commanded, axis, sign }): readonly Finding[] => {
    if (axis !== commanded)
      return [{ kind: 'other-axis-moves', axis: commanded, candidates: ['motors-crossed'], apart: [] }];
    return sign === -1 ? [{ kind: 'mirrored', axis: commanded, candidates: [], apart: [] }] : [];
  });

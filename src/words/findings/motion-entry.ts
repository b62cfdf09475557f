import type { MotionFact, MotionKind } from '../../model/finding.ts';
import type { SituationName } from '../../model/seek-situations.ts';
import { candidatesText } from '../seek-words.ts';
import type { Change, FindingEntry } from './entry.ts';

interface MotionEntry {
  readonly title: string;
  /** The case in one sentence; what it fits is added. */
  readonly said: (fact: MotionFact) => string;
  readonly means: string;
  readonly next: readonly string[];
}

const retestOf = (axis: string): string => `first seek and homing of ${axis}`;

/** The change that mends a situation, where a single one does and nobody has to look for it first. */
const cures: Partial<Record<SituationName, (axis: string) => Omit<Change, 'retest'>>> = {
  'direction-inverted': (axis) => ({
    what: 'setting',
    from: `direction of ${axis} as it is`,
    to: 'direction inverted, and the home end left as it is',
    why: 'the tool went against the commanded way; one remedy only, or the two cancel.',
  }),
  'seeks-wrong-end': (axis) => ({
    what: 'setting',
    from: `home end of ${axis} as it is`,
    to: 'the other end, and the direction left as it is',
    why: 'the tool goes the commanded way, and it is sent away from its switch.',
  }),
  mirrored: (axis) => ({
    what: 'setting',
    from: `direction and home end of ${axis} as they are`,
    to: 'both turned round together',
    why: 'two wrong settings cancel at the switch and mirror the parts.',
  }),
  'motors-crossed': (axis) => ({
    what: 'wire',
    from: `motor plugs of ${axis} and the axis that moved`,
    to: 'exchanged, with drive power off and the drives discharged',
    why: 'the other axis moved.',
  }),
  'does-not-clear': (axis) => ({
    what: 'setting',
    from: `back-off of ${axis} as it is`,
    to: 'longer than the switch needs to let go',
    why: 'the axis came back and the switch was still operated.',
  }),
  'zero-not-set': (axis) => ({
    what: 'setting',
    from: `no home value for ${axis}`,
    to: 'a home value that the homing sets',
    why: 'every limit is counted from the zero.',
  }),
};

/** An entry for what motion showed: the axis, what it can have been, and what would tell. */
export function motionEntry<Kind extends MotionKind>({
  title,
  said,
  means,
  next,
}: MotionEntry): FindingEntry<Kind> {
  return {
    title,
    said: (finding) => {
      const fact: MotionFact = finding;
      return `${said(fact)}${candidatesText(fact.candidates, fact.apart)}`;
    },
    means,
    next,
    change: (finding) => {
      const { axis, candidates }: MotionFact = finding;
      const [only] = candidates.length === 1 || isOneRemedy(candidates) ? candidates : [];
      const cure = only && cures[only];
      return cure ? [{ ...cure(axis), retest: retestOf(axis) }] : [];
    },
  };
}

/** A reversed coil and an inverted setting are mended by the same one change. */
const isOneRemedy = (candidates: readonly SituationName[]): boolean =>
  candidates.every((each) => each === 'direction-inverted' || each === 'motor-coil-reversed');

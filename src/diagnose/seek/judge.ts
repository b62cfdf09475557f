import type { EvidenceLevel } from '../../model/verdict.ts';
import { type Candidates, candidatesFor } from './candidates.ts';
import type { Features } from './features.ts';
import { observe, type SeekEvidence } from './observe.ts';
import type { SeekRoles } from './roles.ts';
import type { SeekFindingKind, SituationName } from './situations/situation.ts';

/** What the seeks of one axis come to. */
export interface SeekJudgement {
  readonly features: Features;
  readonly candidates: Candidates;
  /** Those of them that this check is about. */
  readonly own: readonly SituationName[];
  /** Sound, faulty whichever candidate it is, not yet told apart, or contradicting itself. */
  readonly says: 'sound' | 'faulty' | 'open' | 'contradictory';
  readonly findings: readonly SeekFinding[];
  readonly direction: DirectionKnown;
}

export interface SeekFinding {
  readonly kind: SeekFindingKind;
  /** Everything left that would show so. */
  readonly situations: readonly SituationName[];
}

/** The true way of a positive command: `sign` −1 goes opposite to ISO 841's arrow. */
export type DirectionKnown =
  | {
      readonly known: true;
      readonly sign: 1 | -1;
      readonly evidence: Extract<EvidenceLevel, 'told' | 'repeated'>;
    }
  | { readonly known: false };

/** Only a measurement or a long look tells these from a sound seek; they are other checks' business, unless trips lie apart. */
const isLeftToOthers = (name: SituationName, { trips }: Features): boolean =>
  name === 'scale-off' || (name === 'sags-at-start' && trips !== 'scattered' && trips !== 'drifting');

export const judgeSeek = (evidence: SeekEvidence): SeekJudgement =>
  judgeFeatures(observe(evidence), evidence.roles);

/** `others`: situations that are the business of another check. */
export function judgeFeatures(
  features: Features,
  roles: SeekRoles,
  others: readonly SituationName[] = [],
): SeekJudgement {
  const candidates = candidatesFor(features, roles);
  const own = candidates.left.filter(({ name }) => !isLeftToOthers(name, features) && !others.includes(name));
  const isOpen = own.some(({ name }) => name === 'healthy');
  return {
    features,
    candidates,
    own: own.map(({ name }) => name),
    says: own.length === 0 ? 'contradictory' : isOpen ? (own.length === 1 ? 'sound' : 'open') : saysOf(own),
    findings: isOpen ? [] : findingsOf(own),
    direction: directionOf(features),
  };
}

/** A touch of the work is no fault, and what was not reported is no finding: without another candidate nothing is said. */
const saysOf = (own: Candidates['left']): 'faulty' | 'open' =>
  own.every(({ finding }) => finding !== undefined) ? 'faulty' : 'open';

function findingsOf(own: Candidates['left']): readonly SeekFinding[] {
  const kinds = [...new Set(own.flatMap(({ finding }) => finding ?? []))];
  return kinds.map((kind) => ({
    kind,
    situations: own.filter(({ finding }) => finding === kind).map(({ name }) => name),
  }));
}

/** A place that a proved switch marks outweighs an eye; without either, the stream knows commands only. */
function directionOf({ place, tool, way }: Features): DirectionKnown {
  if (place !== undefined) return { known: true, sign: place === 'agrees' ? 1 : -1, evidence: 'repeated' };
  if (way === 'none' || tool === undefined || tool === 'none') return { known: false };
  return { known: true, sign: tool === 'as-commanded' ? 1 : -1, evidence: 'told' };
}

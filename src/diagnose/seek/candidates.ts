import { type Feature, type Features, fits, type Means, meansOf, tellsApart } from './features.ts';
import type { SeekRoles } from './roles.ts';
import { directionSituations } from './situations/direction.ts';
import { gantrySituations } from './situations/gantry.ts';
import { motionSituations } from './situations/motion.ts';
import { type Situation, type SituationName, usual } from './situations/situation.ts';
import { switchSituations } from './situations/switches.ts';

export const situations: readonly Situation[] = [
  ...directionSituations,
  ...switchSituations,
  ...motionSituations,
  ...gantrySituations,
].map((each) => ({ ...each, pattern: { ...usual, ...each.pattern } }));

/** What a seek can have been, given everything observed, and what would tell the rest apart. */
export interface Candidates {
  readonly left: readonly Situation[];
  /** Features not yet observed, each with the pairs it would tell apart. */
  readonly separators: readonly Separator[];
  /** Pairs that nothing tells apart and nothing needs to: the remedy is the same. */
  readonly inseparable: readonly (readonly [SituationName, SituationName])[];
}

export interface Separator {
  readonly feature: Feature;
  readonly means: Means;
  readonly pairs: readonly (readonly [SituationName, SituationName])[];
}

/** Situations that fit what was observed. None left: the observations contradict each other, and that must be said. */
export function candidatesFor(features: Features, roles: SeekRoles): Candidates {
  const left = situations.filter(({ pattern, applies }) => applies(roles) && fits(features, pattern));
  const pairs = left.flatMap((a, i) => left.slice(i + 1).map((b) => [a, b] as const));
  const byFeature = new Map<Feature, [SituationName, SituationName][]>();
  const inseparable: [SituationName, SituationName][] = [];
  for (const [a, b] of pairs) {
    const apart = tellsApart(a.pattern, b.pattern).filter((name) => features[name] === undefined);
    if (apart.length === 0) inseparable.push([a.name, b.name]);
    for (const name of apart) byFeature.set(name, [...(byFeature.get(name) ?? []), [a.name, b.name]]);
  }
  const separators = [...byFeature].map(([feature, told]) => ({
    feature,
    means: meansOf[feature],
    pairs: told,
  }));
  return { left, separators: separators.sort((a, b) => b.pairs.length - a.pairs.length), inseparable };
}

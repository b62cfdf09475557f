import type { Scene } from '../../model/procedure.ts';
import type { Verdict } from '../../model/verdict.ts';
import { axesWithoutHome } from '../scope/axes-to-seek.ts';
import { withoutEvidence } from './status.ts';

/** What a check that needs a home switch says of the axes that have none. */
export const homelessAxes = (check: 'seek' | 'homing', scene: Scene): readonly Verdict[] =>
  axesWithoutHome(scene).map(({ letter }) => withoutEvidence({ check, subject: letter }, 'no-home-switch'));

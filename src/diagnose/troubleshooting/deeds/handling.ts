import type { State } from '../../circuit/state.ts';
import type { DeedOf } from '../deed.ts';
import type { Imagined } from '../imagined.ts';

/** A loose wire shows only while current flows: an open contact is held pressed meanwhile. */
export const heldFor = (contact: 'normally open' | 'normally closed'): State['actuation'] =>
  contact === 'normally open' ? 'pressed by hand' : 'rest';

const handled = (handling: State['handling']) => (scene: Imagined) =>
  scene.glimpse({ handling, actuation: heldFor(scene.wiring.contact) });

export const rest = {
  name: 'rest',
  kind: 'hands',
  minutes: 0.5,
  mistaken: 0.01,
  applies: () => true,
  odds: (scene) => scene.glimpse(),
} as const satisfies DeedOf<'rest'>;

export const tug = {
  name: 'tug',
  kind: 'hands',
  minutes: 2,
  mistaken: 0.03,
  applies: () => true,
  odds: handled('tugged'),
} as const satisfies DeedOf<'tug'>;

export const flex = {
  name: 'flex',
  kind: 'hands',
  minutes: 3,
  mistaken: 0.03,
  applies: () => true,
  odds: handled('cable flexed'),
} as const satisfies DeedOf<'flex'>;

const while_ = (running: State['running']) => (scene: Imagined) => scene.glimpse({ running });

/** Drives on and standing, the spindle turning, an axis shuttling: by the person's own control. */
export const drives = {
  name: 'drives',
  kind: 'energised',
  minutes: 6,
  mistaken: 0.05,
  applies: () => true,
  odds: while_('drives'),
} as const satisfies DeedOf<'drives'>;

export const spindle = {
  name: 'spindle',
  kind: 'energised',
  minutes: 10,
  mistaken: 0.05,
  applies: () => true,
  odds: while_('spindle'),
} as const satisfies DeedOf<'spindle'>;

export const axis = {
  name: 'axis',
  kind: 'energised',
  minutes: 10,
  mistaken: 0.05,
  applies: () => true,
  odds: while_('axis'),
} as const satisfies DeedOf<'axis'>;

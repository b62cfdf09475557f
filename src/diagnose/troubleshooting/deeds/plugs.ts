import { outThenLinked } from '../../../model/outcomes.ts';
import type { State } from '../../circuit/state.ts';
import type { DeedOf } from '../deed.ts';
import type { Imagined } from '../imagined.ts';
import { joined } from '../odds.ts';

type End = 'controller' | 'switch';

const pulled = (end: End): Partial<State> => ({ plug: `out at ${end}` });
const linked = (end: End): Partial<State> => ({ plug: `out at ${end}`, link: `at ${end}` });

const bridge = (end: End) => (scene: Imagined) =>
  joined(scene.glimpse(pulled(end)), scene.glimpse(linked(end)), outThenLinked);

export const unplugController = {
  name: 'unplug-controller',
  kind: 'hands',
  minutes: 2,
  mistaken: 0.02,
  applies: () => true,
  odds: (scene) => scene.glimpse(pulled('controller')),
} as const satisfies DeedOf<'unplug-controller'>;

export const unplugSwitch = {
  name: 'unplug-switch',
  kind: 'hands',
  minutes: 3,
  mistaken: 0.02,
  applies: () => true,
  odds: (scene) => scene.glimpse(pulled('switch')),
} as const satisfies DeedOf<'unplug-switch'>;

export const linkController = {
  name: 'link-controller',
  kind: 'hands',
  minutes: 4,
  mistaken: 0.03,
  applies: () => true,
  odds: bridge('controller'),
} as const satisfies DeedOf<'link-controller'>;

export const linkSwitch = {
  name: 'link-switch',
  kind: 'hands',
  minutes: 5,
  mistaken: 0.03,
  applies: () => true,
  odds: bridge('switch'),
} as const satisfies DeedOf<'link-switch'>;

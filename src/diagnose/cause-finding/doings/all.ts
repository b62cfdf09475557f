import type { DeedName, MeterDeed } from '../../../model/deed-names.ts';
import type { Bin, OutcomeOf } from '../../../model/outcomes.ts';
import { meterDeeds } from '../../troubleshooting/deeds/all.ts';
import type { Doing } from '../site.ts';
import { energised } from './energised.ts';
import { lamp, look } from './looks.ts';
import { metered } from './meter.ts';
import { linked, unplugged } from './plugs.ts';
import { handled, neighbour, press, pushed, rest } from './presses.ts';

/** What is asked of a person for each deed. A deed without its asks does not compile, nor do asks without their deed. */
export const doings: { readonly [Name in DeedName]: Doing<OutcomeOf<Name>> } = {
  rest,
  press,
  tap: pushed('tap'),
  carriage: pushed('carriage'),
  neighbour,
  tug: handled('tug'),
  flex: handled('flex'),
  'unplug-controller': unplugged('controller'),
  'unplug-switch': unplugged('switch'),
  'link-controller': linked('controller'),
  'link-switch': linked('switch'),
  lamp,
  lever: look('lever'),
  face: look('face'),
  settings: look('settings'),
  blades: look('blades'),
  gap: look('gap'),
  bracket: look('bracket'),
  clip: look('clip'),
  ...(Object.fromEntries(meterDeeds.map(({ name, probe }) => [name, metered(name, probe)] as const)) as {
    readonly [Name in MeterDeed]: Doing<Bin>;
  }),
  drives: energised('drives'),
  spindle: energised('spindle'),
  axis: energised('axis'),
};

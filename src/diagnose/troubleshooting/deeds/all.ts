import type { Wiring } from '../../circuit/wiring.ts';
import type { AnyDeed } from '../deed.ts';
import * as handling from './handling.ts';
import * as looks from './looks.ts';
import * as meter from './meter.ts';
import * as plugs from './plugs.ts';
import * as presses from './presses.ts';

/** Everything a person may be asked to do or look at. Adding one is an entry here, its odds and its words. */
export const deeds = [
  handling.rest,
  presses.press,
  presses.tap,
  presses.carriage,
  presses.neighbour,
  handling.tug,
  handling.flex,
  plugs.unplugController,
  plugs.unplugSwitch,
  plugs.linkController,
  plugs.linkSwitch,
  looks.lamp,
  looks.lever,
  looks.face,
  looks.settings,
  looks.blades,
  looks.gap,
  looks.bracket,
  looks.clip,
  meter.signalCoreOhms,
  meter.commonCoreOhms,
  meter.signalToReturn,
  meter.signalToPlus,
  meter.contactClosed,
  meter.contactOpen,
  meter.pullOhms,
  meter.terminalClosed,
  meter.terminalOpen,
  meter.sensorSupply,
  meter.sensorOutput,
  meter.returnsApart,
  meter.couplerCommon,
  meter.loopClosed,
  meter.loopOpen,
  handling.drives,
  handling.spindle,
  handling.axis,
] as const satisfies readonly AnyDeed[];
/** Those that read a figure off a meter. */
export const meterDeeds = deeds.filter((deed) => deed.kind === 'meter');
export type DeedName = (typeof deeds)[number]['name'];

export const deedsFor = (wiring: Wiring): readonly AnyDeed[] =>
  deeds.filter(({ applies }) => applies(wiring));

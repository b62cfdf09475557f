import { type CheckName, checkNames } from '../../model/verdict.ts';
import { type AnyCheck, anyCheck } from './any-check.ts';
import { envelope } from './envelope.ts';
import { homing } from './homing.ts';
import { openWire } from './open-wire.ts';
import { press } from './press.ts';
import { repeat } from './repeat.ts';
import { rest } from './rest.ts';
import { scale } from './scale.ts';
import { seek } from './seek.ts';
import { stop } from './stop.ts';
import { stopping } from './stopping.ts';

/** Changed judgements under the same readings mean a new number: a saved session then says that the rules changed. */
export const rulesVersion = 4;

/** The checks in the order a person should do them: listening, then hands, then plugs, then power, then motion. A new check is one line here. */
export const registry: readonly AnyCheck[] = [
  anyCheck(rest),
  anyCheck(press),
  anyCheck(openWire),
  anyCheck(stop),
  anyCheck(seek),
  anyCheck(homing),
  anyCheck(repeat),
  anyCheck(stopping),
  anyCheck(envelope),
  anyCheck(scale),
];

/** The registered names, in the order of the house's list. */
export const registered: readonly CheckName[] = checkNames.filter((name) =>
  registry.some((check) => check.name === name),
);

/** What a commissioning does unless more is asked for: ten homings an axis, and lengths measured by hand, take an hour of their own. */
export const usual: readonly CheckName[] = registered.filter((name) => name !== 'repeat' && name !== 'scale');

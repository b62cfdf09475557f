import { type CheckName, checkNames } from '../../model/verdict.ts';
import { type AnyCheck, anyCheck } from './any-check.ts';
import { openWire } from './open-wire.ts';
import { press } from './press.ts';
import { rest } from './rest.ts';
import { stop } from './stop.ts';

/** Changed judgements under the same readings mean a new number: a saved session then says that the rules changed. */
export const rulesVersion = 1;

/** The checks in the order a person should do them: listening, then hands, then plugs, then power. A new check is one line here. */
export const registry: readonly AnyCheck[] = [
  anyCheck(rest),
  anyCheck(press),
  anyCheck(openWire),
  anyCheck(stop),
];

/** The registered names, in the order of the house's list. */
export const registered: readonly CheckName[] = checkNames.filter((name) =>
  registry.some((check) => check.name === name),
);

import type { LengthPlace } from '../../model/ask.ts';
import type { Axis } from '../../model/machine.ts';
import { type Mm, mm } from '../../model/units.ts';
import type { CheckName } from '../../model/verdict.ts';
import { timeToAnswer } from '../limits.ts';
import { unitOf } from '../scope/axes-asked.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/** A length that only an instrument or the controller's own settings can tell, mm or degrees; undefined where the person gave none. */
export function* askLength(
  check: CheckName,
  where: LengthPlace,
  axis: Axis,
  latest: Latest,
  system?: string,
): Asking<Mm | undefined> {
  const told = yield* untilUnbroken(
    {
      check,
      action: 'measure',
      quantity: 'distance',
      unit: unitOf(axis),
      where,
      axis: axis.letter,
      ...(system !== undefined && { system }),
      seconds: timeToAnswer,
    },
    latest,
  );
  return told.answer === 'value' ? mm(told.value) : undefined;
}

import type { LookDeed } from '../../../model/deed-names.ts';
import type { Lit, YesNo } from '../../../model/outcomes.ts';
import { timeToAnswer, timeToPlug } from '../../limits.ts';
import { refusal } from '../../procedures/asking.ts';
import { untilUnbroken } from '../../procedures/motors-off.ts';
import type { Doing } from '../site.ts';

const check = 'troubleshoot' as const;

export const look = (topic: LookDeed): Doing<YesNo> =>
  function* ({ of, latest }) {
    const ask = { check, action: 'confirm', topic, subject: of.subject, seconds: timeToPlug } as const;
    const ended = yield* untilUnbroken(ask, latest);
    if (ended.answer === 'yes' || ended.answer === 'no') return { outcome: ended.answer };
    return { missing: refusal(ended) ?? 'not-sure' };
  };

export const lamp: Doing<Lit> = function* ({ of, latest }) {
  const ask = { check, action: 'look', topic: 'lamp', subject: of.subject, seconds: timeToAnswer } as const;
  const ended = yield* untilUnbroken(ask, latest);
  if (ended.answer === 'on' || ended.answer === 'off') return { outcome: ended.answer };
  return { missing: refusal(ended) ?? 'not-sure' };
};

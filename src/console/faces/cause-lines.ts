import type { CauseFacts } from '../../model/cause-facts.ts';
import type { FaceEvent } from '../../session/operator.ts';
import {
  causeSentences,
  causeTitle,
  evidenceText,
  fixText,
  retestText,
  whatHappened,
} from '../../words/cause/cause-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';

type Told = Extract<FaceEvent, { readonly kind: 'cause' }>;

const said = ({ evidence }: CauseFacts, speaks: 'for' | 'against'): readonly string[] =>
  evidence.filter((each) => each.speaks === speaks).map(evidenceText);

/** The cause as one object a line. `named` holds every fault that is in it; `together` which of them would have to be there at once. */
export function causeLine({ subject, cause, restored }: Told): Readonly<Record<string, unknown>> {
  const { causes, share, ended } = cause;
  return {
    kind: 'cause',
    named: [...new Set(causes.flat())],
    inseparable: causes.length > 1,
    subject,
    ...(cause.beside === undefined ? {} : { beside: cause.beside }),
    share,
    ended,
    together: causes,
    for: said(cause, 'for'),
    against: said(cause, 'against'),
    fix: causes.length === 1 ? fixText(causes[0] ?? []) : causes.map(fixText).join(' Or: '),
    retest: cause.retest,
    ruledOut: cause.ruledOut,
    ...(cause.assumed.length > 0 ? { assumed: cause.assumed } : {}),
    ...(restored ? { restored: true } : {}),
  };
}

/** The same, in sentences. */
export function causeLines({ subject, cause, restored }: Told): readonly string[] {
  const [pro, con] = [said(cause, 'for'), said(cause, 'against')];
  const several = cause.causes.length > 1;
  return [
    `${restored ? 'Cause, from before the break' : 'Cause'}, ${subject}: ${causeSentences(cause).join(' ')}`,
    ...cause.causes.flatMap((each) => [
      ...(several ? [`  ${causeTitle(each, cause.beside)}.`] : []),
      ...whatHappened(each).map((what) => `  ${what}`),
      `  Fix: ${fixText(each)}`,
    ]),
    ...pro.map((each) => `  For it: ${each}`),
    ...con.map((each) => `  Against it: ${each}`),
    ...(cause.ruledOut.length === 0
      ? []
      : [`  Ruled out: ${cause.ruledOut.map((each) => faultWords[each].title.toLowerCase()).join('; ')}.`]),
    ...(cause.causes.every((each) => each.length === 0) ? [] : [`  ${retestText(cause)}`]),
  ];
}

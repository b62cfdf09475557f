import type { AskAction, MotionTopic } from '../../model/ask.ts';
import type { AxisLetter, Subject } from '../../model/machine.ts';
import type { CheckName } from '../../model/verdict.ts';
import { mostLooks, timeToAnswer } from '../limits.ts';
import type { Feature } from '../seek/features.ts';
import type { SeekJudgement } from '../seek/judge.ts';
import type { SeekAnswers } from '../seek/observe.ts';
import { tellsMost } from '../seek/tells-most.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/** The question that tells a feature, and what its yes and no come to. */
const looks: { readonly [Name in Feature]?: { topic: MotionTopic | 'touched'; yes: string; no: string } } = {
  reached: { topic: 'reached', yes: 'yes', no: 'no' },
  buzzed: { topic: 'buzzed', yes: 'yes', no: 'no' },
  cameBack: { topic: 'came-back', yes: 'yes', no: 'no' },
  standing: { topic: 'past-switch', yes: 'past-switch', no: 'short-of-it' },
  movedAxis: { topic: 'moved-other', yes: 'other', no: 'this' },
  racked: { topic: 'racked', yes: 'yes', no: 'no' },
  touched: { topic: 'touched', yes: 'yes', no: 'no' },
};

export interface LookingOf {
  readonly check: CheckName;
  readonly axis: AxisLetter;
  /** Its home switch, for the question whether something stands on it. */
  readonly home: Subject | undefined;
  readonly latest: Latest;
  readonly judge: (answers: SeekAnswers) => SeekJudgement;
}

/** Asks what was seen, the question that tells most first, until nothing is left that eyes can tell apart. */
export function* lookApart(of: LookingOf, told: SeekAnswers): Asking<SeekAnswers> {
  const { check, axis, latest, judge, home } = of;
  let answers = told;
  const asked = new Set<Feature>();
  while (asked.size < mostLooks) {
    const judged = judge(answers);
    // A trip proves that an input answered, not that the axis was there: that is asked first, whatever else is open.
    const first: readonly Feature[] = judged.features.trip === 'own' && !answers.reached ? ['reached'] : [];
    const next = [...first, ...tellsMost(judged)].find((each) => looks[each] && !asked.has(each));
    const look = next && looks[next];
    if (!look) break;
    asked.add(next);
    const action = askFor(look.topic, axis, home);
    if (!action) continue;
    const { answer } = yield* untilUnbroken({ check, seconds: timeToAnswer, ...action }, latest);
    if (answer === 'skip') break;
    if (answer === 'yes' || answer === 'no') answers = { ...answers, [next]: look[answer] };
  }
  return answers;
}

function askFor(
  topic: MotionTopic | 'touched',
  axis: AxisLetter,
  home: Subject | undefined,
): AskAction | undefined {
  if (topic !== 'touched') return { action: 'look', topic, axis };
  return home === undefined ? undefined : { action: 'look', topic, subject: home };
}

import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import type { Conclusion, Inquiry } from '../../../../src/diagnose/troubleshooting/inquiry.ts';
import type { Trial } from '../../../../src/diagnose/troubleshooting/prospect.ts';
import type { Outcome } from '../../../../src/model/outcomes.ts';
import { looksOf } from './doings.ts';
import { type Answer, lookedAt, type Question, questionOf } from './looks.ts';
import type { Machine } from './machine.ts';
import { outcomeOf } from './outcomes.ts';
import { answerOf } from './person.ts';
import { taken } from './readings.ts';
import type { Solver } from './solvers.ts';

/** One search for a cause, from the complaint to the end. */
export interface Searched {
  readonly machine: Machine;
  readonly conclusion: Conclusion;
  readonly asked: readonly { readonly deed: DeedName; readonly outcome: Outcome | 'not sure' }[];
  readonly minutes: number;
}

/** Who decides what is done next; undefined where it is over. */
export type Guide = (inquiry: Inquiry) => Trial | undefined;

type Searching = Generator<readonly Question[], Searched, readonly Answer[]>;

/** The troubleshooter gets the words of what was heard, seen or measured; the machine stays here. */
export function* search(machine: Machine, from: Inquiry, guide: Guide, mistakes: number): Searching {
  let inquiry = from;
  let minutes = 0;
  const asked: { deed: DeedName; outcome: Outcome | 'not sure' }[] = [];
  for (let trial = guide(inquiry); trial; trial = guide(inquiry)) {
    const { name } = trial;
    minutes += trial.minutes;
    const isAgain = asked.some(({ deed }) => deed === name);
    const looks = looksOf(name, machine.wiring).map((look) => lookedAt(name, look, isAgain));
    const answers = looks.length === 0 ? [] : yield looks.map((look) => questionOf(machine, look));
    const looked = looks.map((look, at) => taken(machine, look, answers[at] ?? []));
    const outcome = answerOf(machine, name, outcomeOf(machine, name, looked), mistakes, isAgain);
    asked.push({ deed: name, outcome: outcome ?? 'not sure' });
    inquiry = outcome === undefined ? inquiry.ruledOut(name) : inquiry.learnt(name, outcome);
  }
  return { machine, conclusion: inquiry.conclusion(), asked, minutes };
}

/** Many searches side by side: what they need at the same time is solved in one go. */
export function together(searches: readonly Searching[], solve: Solver): readonly Searched[] {
  const ended = new Map<Searching, Searched>();
  let waiting = searches.map((each) => ({ each, step: each.next() }));
  while (waiting.length > 0) {
    const asking = waiting.flatMap(({ each, step }) => {
      if (step.done) {
        ended.set(each, step.value);
        return [];
      }
      return [{ each, questions: step.value }];
    });
    const answers = solve(asking.flatMap(({ questions }) => questions));
    let next = 0;
    waiting = asking.map(({ each, questions }) => {
      const own = answers.slice(next, next + questions.length);
      next += questions.length;
      return { each, step: each.next(own) };
    });
  }
  return searches.flatMap((each) => ended.get(each) ?? []);
}

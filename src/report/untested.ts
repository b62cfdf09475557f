import { allSwitches } from '../model/machine.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { type CheckName, checkNames, type Verdict } from '../model/verdict.ts';
import { missingWords } from '../words/missing-words.ts';
import { named } from '../words/place.ts';
import { checkWords, statusWords } from '../words/verdict-words.ts';
import { axisChecks, subjectTitle } from './axes.ts';
import type { Untested } from './record.ts';

/** Checks that judge one subject at a time; the others concern axes or the whole machine. */
const bySwitch: readonly CheckName[] = ['rest', 'press', 'open-wire', 'stop'];

/** Everything this record does not cover, with why and what follows from it. Never empty: no session covers all of it. */
export function untestedOf(facts: SessionFacts): readonly Untested[] {
  return [
    ...facts.verdicts.flatMap((verdict) => judgedWithout(verdict, facts)),
    ...bySwitch.flatMap((check) => neverJudged(check, facts)),
    ...axisChecks.flatMap((check) => axesNeverJudged(check, facts)),
    ...functionsNotTested(facts),
    ...checkNames
      .filter((check) => !bySwitch.includes(check) && !facts.verdicts.some((each) => each.check === check))
      .map((check) => wholeMachine(check, reasonFor(check, facts))),
  ];
}

function judgedWithout(verdict: Verdict, { machine }: SessionFacts): readonly Untested[] {
  const { check, subject, status, missing } = verdict;
  if (status !== 'not-tested' && status !== 'inconclusive') return [];
  const why = missing.map((each) => missingWords[each]).join('; ');
  const found = allSwitches(machine).some((each) => each.subject === subject);
  return [
    {
      check,
      subject,
      what: `${checkWords[check].title}: ${found ? named(subject, machine) : subjectTitle(subject)}`,
      reason: why === '' ? statusWords[status].word : `${statusWords[status].word}: ${why}`,
      consequence: checkWords[check].untested,
    },
  ];
}

/** Subjects that should have a verdict and have none; where a check gave none at all, one line says it for all. */
function neverJudged(check: CheckName, facts: SessionFacts): readonly Untested[] {
  const subjects = subjectsOf(check, facts);
  const open = subjects.filter(
    (subject) => !facts.verdicts.some((each) => each.check === check && each.subject === subject),
  );
  if (open.length === 0) return [];
  if (open.length === subjects.length) return [wholeMachine(check, reasonFor(check, facts))];
  const reason = facts.asked.only === undefined ? reasonFor(check, facts) : 'left out of this session';
  return open.map((subject) => ({
    check,
    subject,
    what: `${checkWords[check].title}: ${subject}`,
    reason,
    consequence: checkWords[check].untested,
  }));
}

/** Axes left out by a check that judged others; one that judged none has a line for the whole machine. */
function axesNeverJudged(check: CheckName, facts: SessionFacts): readonly Untested[] {
  const judged = facts.verdicts.filter((each) => each.check === check).map(({ subject }) => subject);
  if (judged.length === 0) return [];
  return facts.machine.axes
    .filter(({ letter }) => !judged.includes(letter))
    .map(({ letter }) => ({
      check,
      subject: letter,
      what: `${checkWords[check].title}: ${subjectTitle(letter)}`,
      reason: facts.asked.only === undefined ? reasonFor(check, facts) : 'left out of this session',
      consequence: checkWords[check].untested,
    }));
}

function subjectsOf(check: CheckName, { machine }: SessionFacts): readonly string[] {
  if (check === 'rest') return machine.inputs.map(({ name }) => name);
  const switches = allSwitches(machine);
  const wanted = check === 'stop' ? switches.filter(({ duty }) => duty.includes('stop')) : switches;
  return wanted.map(({ subject }) => subject);
}

const wholeMachine = (check: CheckName, reason: string): Untested => ({
  check,
  subject: 'machine',
  what: `${checkWords[check].title}: the whole machine`,
  reason,
  consequence: checkWords[check].untested,
});

const reasonFor = (check: CheckName, { asked, stopped }: SessionFacts): string => {
  if (!asked.checks.includes(check)) return 'not part of this session';
  return stopped ? missingWords.stopped : 'asked for, but no result was reached';
};

/** What status inputs cannot show: the functions behind them. */
function functionsNotTested({ machine }: SessionFacts): readonly Untested[] {
  const switches = allSwitches(machine);
  const of = (duty: 'door' | 'probe' | 'stop') => switches.filter((each) => each.duty.includes(duty));
  const noStop: Untested = {
    check: 'stop',
    subject: 'machine',
    what: 'Emergency stop: status and function',
    reason: 'the machine file declares no stop input',
    consequence: checkWords.stop.untested,
  };
  return [
    ...(of('stop').length === 0 ? [noStop] : []),
    ...of('door').map(({ subject }) => ({
      subject,
      what: `Door function: ${named(subject, machine)}`,
      reason: 'only its status was listened to',
      consequence: 'It is not known whether an open door takes power away or keeps motion from starting.',
    })),
    ...of('probe').map(({ subject }) => ({
      subject,
      what: `Probing: ${named(subject, machine)}`,
      reason: 'no probing move was watched',
      consequence: 'Touch tool and plate by hand before every probing; a missed touch drives the tool on.',
    })),
  ];
}

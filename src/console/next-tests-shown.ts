import { beginSearch } from '../diagnose/cause-finding/begin-search.ts';
import { candidatesOf } from '../diagnose/cause-finding/candidates.ts';
import { causeFacts } from '../diagnose/cause-finding/conclude.ts';
import { type NextTest, nextTests } from '../diagnose/cause-finding/next-tests.ts';
import type { CauseFacts, SearchOrder } from '../model/cause-facts.ts';
import { type InputName, type Machine, switchOf } from '../model/machine.ts';
import { causeSentences, causeTitle, evidenceText, fixText, shareText } from '../words/cause/cause-words.ts';
import { deedWords } from '../words/cause/deed-words.ts';
import { outcomeText } from '../words/cause/outcome-words.ts';
import { counted } from '../words/figures.ts';
import { showJson, showPage } from './show.ts';

/** How many tests are worth writing down for someone far away. */
const most = 5;

/** Far from the machine: what is known from the session, and what to ask next, the best test first. Gives the exit code. */
export function showNextTests(
  order: SearchOrder,
  machine: Machine,
  session: string,
  json: boolean,
): 0 | 1 | 2 {
  const of = switchOf(machine, order.subject);
  if (!of) return 2;
  const candidates = candidatesOf(machine, of);
  const { told = 'both' } = order;
  const begun = beginSearch(order, { of, scene: { machine }, told }, candidates);
  const search = order.earlier.reduce((now, { deed, outcome }) => now.learnt(deed, outcome), begun);
  const { trial, search: narrowed } = search.next();
  const learnt = order.earlier.map((each) => ({ ...each, earlier: true as const }));
  const facts = causeFacts({
    search: narrowed,
    candidates,
    order,
    learnt,
    notDone: [],
    isOver: trial === undefined,
    told,
    beside: order.beside,
  });
  const tests = nextTests(narrowed, most);
  if (json) showJson(asJson(order, session, facts, tests));
  else showPage(asLines(order, session, facts, tests));
  const isNothing = facts.causes.length === 1 && facts.causes[0]?.length === 0;
  return facts.ended === 'named' ? (isNothing ? 0 : 1) : 2;
}

const asJson = (order: SearchOrder, session: string, facts: CauseFacts, tests: readonly NextTest[]) => ({
  subject: order.subject,
  session,
  history: order.history,
  ...(facts.beside === undefined ? {} : { beside: facts.beside }),
  assumed: facts.assumed,
  evidence: facts.evidence.map((each) => ({ ...each, text: evidenceText(each) })),
  named: [...new Set(facts.causes.flat())],
  inseparable: facts.ended !== 'named',
  together: facts.causes,
  share: facts.share,
  next: tests.map(({ deed, kind, minutes, answers }) => {
    const { title, tools, cautions } = deedWords(deed);
    return {
      deed,
      kind,
      minutes,
      text: title,
      tools,
      cautions,
      answers: answers.map((each) => ({ ...each, text: outcomeText(deed, each.outcome) })),
    };
  }),
});

/** Of many causes the first few are named. */
const named = 6;

function asLines(
  { subject }: SearchOrder,
  session: string,
  facts: CauseFacts,
  tests: readonly NextTest[],
): readonly string[] {
  const { causes } = facts;
  const more = causes.length > named ? `, and ${causes.length - named} less likely ones` : '';
  const settled = facts.ended === 'named';
  return [
    `${subject}, from the session ${session}`,
    ...(facts.evidence.length === 0
      ? ['It holds nothing of this switch that counts for its trouble.']
      : ['What it showed:', ...facts.evidence.map((each) => `  ${evidenceText(each)}`)]),
    ...(settled
      ? causeSentences(facts)
      : [
          ...causeSentences({ ...facts, causes: causes.slice(0, named) }).slice(1),
          `It may be, the likeliest first: ${causes
            .slice(0, named)
            .map((each) => causeTitle(each, facts.beside))
            .join('; ')}${more}.`,
        ]),
    ...(settled ? causes.map((each) => `Fix: ${fixText(each)}`) : []),
    '',
    ...(tests.length === 0
      ? ['No test that may be asked for tells more.']
      : ['Ask this next, the best first; each of them alone is worth asking:']),
    ...tests.flatMap((test, i) => testLines(test, i + 1, facts.beside)),
  ];
}

function testLines(
  { deed, kind, minutes, answers }: NextTest,
  number: number,
  beside: InputName | undefined,
): readonly string[] {
  const { title, tools, cautions } = deedWords(deed);
  const power = kind === 'energised' ? ', drive power on' : ', motor power off';
  return [
    '',
    `${number}. ${title}`,
    `   about ${minutes} min${power}; tools: ${tools}`,
    ...cautions.map((each) => `   Caution: ${each}`),
    ...answers.map(({ outcome, chance, causes, left }) => {
      const others = left > causes.length ? `, or ${counted(left - causes.length, 'other')}` : '';
      return `   - ${outcomeText(deed, outcome)} (${shareText(chance)}): ${causes.map((each) => causeTitle(each, beside)).join('; ')}${others}`;
    }),
  ];
}

import { findingKinds } from '../model/finding.ts';
import { namesToTry, plainly } from '../model/nearest.ts';
import { type EvidenceLevel, everyCheck, type Status } from '../model/verdict.ts';
import { effect, explained, explainPage } from './explain.ts';
import {
  checkWords,
  evidenceWords,
  noEvidence,
  statusWords,
  steadyWords,
  weightWords,
} from './verdict-words.ts';
import { faultWords } from './wiring/fault-words.ts';

/** Something the tool prints and a person may want explained. */
export interface Term {
  /** As commands and verdicts name it, and as it is printed. */
  readonly names: readonly string[];
  readonly page: string;
  /** For programs. */
  readonly json: unknown;
}

/** What a result means for whoever wants to rely on the input. */
const statusMeans = {
  proved:
    'Everything the check asks for was seen, on the evidence that stands beside it. It holds for what was tested, as the machine was then, and is no permission to run it.',
  limited: 'It works as tested, but within a limitation that stands beside it.',
  'not-tested': 'It was not asked for, was skipped, or was not possible. Nothing is known of it.',
  inconclusive: 'It was tried, and what was seen decides nothing. What is missing stands beside it.',
  failed: 'A fault was found. Rely on this input only after it was mended and tested again.',
} satisfies Record<Status, string>;

const steadyMeans =
  'The input did not change while nobody touched anything. That proves nothing of its switch: a dead input is steady too. Steady and ACTIVE with nothing on the switch is to be looked into: the press and the broken wire tell what it is.';

function plain(
  names: readonly [string, string],
  sort: string,
  means: string,
  next: readonly string[] = [],
): Term {
  const [name, title] = names;
  const steps =
    next.length === 0 ? [] : ['', 'What to do next:', ...next.map((step, i) => `  ${i + 1}. ${step}`)];
  return {
    names,
    page: [title, `(${name}, ${sort})`, '', means, ...steps, ''].join('\n'),
    json: { name, title, sort, means, next },
  };
}

const terms: readonly Term[] = [
  ...findingKinds.map((kind) => ({
    names: [kind, explained(kind).title],
    page: explainPage(kind),
    json: explained(kind),
  })),
  ...(Object.keys(statusMeans) as readonly Status[]).map((status) =>
    plain([status, statusWords[status].word], 'a result', statusMeans[status]),
  ),
  {
    ...plain(['steady', steadyWords['?']], 'a result of the check rest', steadyMeans),
    names: ['steady', ...Object.values(steadyWords)],
  },
  plain(['no-evidence', noEvidence.word], 'what a result rests on', noEvidence.means),
  ...(Object.keys(weightWords) as readonly (keyof typeof weightWords)[]).map((weight) =>
    plain(
      [weight, weightWords[weight]],
      'how much a finding weighs',
      `Before a finding: it is ${effect[weight]}.`,
    ),
  ),
  ...(Object.keys(evidenceWords) as readonly EvidenceLevel[]).map((level) =>
    plain([level, evidenceWords[level].word], 'what a result rests on', evidenceWords[level].means),
  ),
  ...everyCheck.map((check) => {
    const { title, question, untested } = checkWords[check];
    return plain([check, title], 'a check', `${question} Where it was not tested: ${untested}`);
  }),
  ...Object.entries(faultWords).map(([fault, { title, what, fix, look }]) =>
    plain([fault, title], 'a possible cause', what, look === undefined ? [fix] : [look, fix]),
  ),
];

const names: readonly string[] = terms.flatMap((each) => each.names);

/** "Fault: ..." as a verdict prints it, or ended as a sentence. */
const bare = (typed: string): string =>
  plainly(typed)
    .replace(new RegExp(`^(?:${Object.keys(weightWords).join('|')}): `), '')
    .replace(/[.:]+$/, '');

/** All that a word stands for, however it is spelled; one title can stand for several causes. */
export const termsNamed = (typed: string): readonly Term[] =>
  terms.filter((each) => each.names.some((name) => plainly(name) === bare(typed)));

/** "Did you mean heads-away?"; empty where nothing is near. */
export const namesNear = (typed: string): string => namesToTry(bare(typed), names, '').trim();

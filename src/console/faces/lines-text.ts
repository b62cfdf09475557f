import { type Ask, subjectOf } from '../../model/ask.ts';
import type { InputName, Machine, Subject } from '../../model/machine.ts';
import type { Verdict } from '../../model/verdict.ts';
import type { FaceEvent, Heard, ShownAsk } from '../../session/operator.ts';
import { answerWords } from '../../words/answer-words.ts';
import { askedAgain } from '../../words/ask-words.ts';
import { askedForTitle } from '../../words/asked-for.ts';
import { possibleText } from '../../words/cause/cause-words.ts';
import { secondsText } from '../../words/figures.ts';
import { saidOf } from '../../words/findings/catalogue.ts';
import { missingWords } from '../../words/missing-words.ts';
import { ownLineWords } from '../../words/own-line-words.ts';
import { seenWords } from '../../words/seen-words.ts';
import { checkWords, evidenceWord, statusWord } from '../../words/verdict-words.ts';
import { asTyped } from '../as-typed.ts';
import { answerKeys } from './answer-keys.ts';
import { causeLines } from './cause-lines.ts';

/** What is asked while an event comes, and the inputs that have changed since, first mover first. */
export interface During {
  readonly ask: Ask;
  readonly moved: readonly InputName[];
}

/** What an event says as plain lines, each a sentence a screen reader can speak. Readings say nothing. */
export function linesFor(event: FaceEvent, machine: Machine, during?: During): readonly string[] {
  switch (event.kind) {
    case 'ask':
      return askLines(event);
    case 'ended':
      return [endedLine(event, during)];
    case 'heard':
      return [heardLine(event)];
    case 'danger':
      return [`DANGER, ${event.axis}: ${event.text}`];
    case 'verdict':
      return verdictLines(event.verdict, machine, event.restored);
    case 'cause':
      return causeLines(event);
    case 'refused':
      return [`Not understood: "${event.found}". Allowed: ${event.allowed.join(', ')}.`];
    case 'notice':
      return [asTyped(event.text)];
    case 'own-line':
      return event.lines;
    case 'reading':
      return [];
    case 'finished':
      return finishedLines(event);
  }
}

/** Where everything is, and what the exit code means. */
export const finishedLines = ({ session, report, exit }: Finished): readonly string[] => [
  '',
  `Session folder: ${session}`,
  `Report: ${report}`,
  `Exit ${exit}: ${exitWords[exit]}`,
];

type Finished = Omit<Extract<FaceEvent, { readonly kind: 'finished' }>, 'kind'>;

const exitWords = {
  0: 'everything asked for was shown, no fault and no limitation found.',
  1: 'at least one fault or limitation was found.',
  2: 'evidence is missing, or the session was stopped.',
} as const;

/** "Press, x-home"; of a check and an input by one name it is said once. */
const titled = (title: string, subject: Subject | undefined): string =>
  subject === undefined || subject === title.toLowerCase() ? title : `${title}, ${subject}`;

function askLines(shown: ShownAsk): readonly string[] {
  const { id, again, ask, text, cautions, answers } = shown;
  const subject = subjectOf(ask);
  const round = ask.action === 'press' && ask.rounds > 1 ? `, press ${ask.round} of ${ask.rounds}` : '';
  return [
    '',
    `Ask ${id}. ${titled(askedForTitle(ask.check), subject)}${round}.`,
    ...(again === undefined ? [] : [askedAgain]),
    text,
    ...cautions.map((each) => `Caution: ${each}`),
    `Answers: ${answers.map((each, i) => `${i + 1} ${each}`).join(', ')}. ${waits(shown)}`,
  ];
}

function waits({ ask, ownLine }: ShownAsk): string {
  if (ownLine) return `Type ? for what they mean. ${ownLineWords.hint}`;
  if (ask.action === 'hands-off') return `Nothing to type; it takes ${secondsText(ask.seconds)}.`;
  if (ask.action === 'press' && ask.expect === 'answer')
    return `The press itself is the answer; waiting up to ${secondsText(ask.seconds)}.`;
  if (ask.action === 'measure') return `Type the number, in ${ask.unit}; ? for what the answers mean.`;
  return 'Type ? for what they mean.';
}

/** Every answer of an ask with its number, key and meaning. */
export const answerLines = ({ answers }: ShownAsk): readonly string[] =>
  answers.map((each, i) => `${i + 1}, ${answerKeys[each]}, or ${each}: ${answerWords[each]}.`);

/** The same where keys are pressed and nothing is typed: digits are no answers there. */
export const answerKeyLines = ({ answers }: ShownAsk): readonly string[] =>
  answers.map((each) => `${answerKeys[each]}  ${each}: ${answerWords[each]}.`);

export function endedLine(
  { by, answer }: Pick<Extract<FaceEvent, { readonly kind: 'ended' }>, 'by' | 'answer'>,
  during: During | undefined,
): string {
  const seen = during && seenWords(during.ask, during.moved);
  const otherwise = answer === 'done' && seen?.asExpected === false ? ` ${seen.text}` : '';
  const said = {
    seen: seen?.text ?? 'Seen.',
    answer: `Noted: ${answer ?? 'answered'}.${otherwise}`,
    time: 'The time is over.',
    gap: 'The stream broke off meanwhile; it is asked again.',
  };
  return said[by];
}

/** "Heard: y-home went active." */
export function heardLine({ input, level, active }: Heard): string {
  if (active !== '?') return `Heard: ${input} went ${active === '1' ? 'active' : 'inactive'}.`;
  return `Heard: ${input} went ${level === 'H' ? 'high' : level === 'L' ? 'low' : 'unknown'}.`;
}

/** The verdict as words, then each finding and each missing piece of evidence as a sentence. */
export function verdictLines(verdict: Verdict, machine: Machine, restored = false): readonly string[] {
  const { check, subject, status, evidence, findings, missing, facts } = verdict;
  const scene = { machine, subject, together: findings.map(({ kind }) => kind) };
  const from = restored ? 'Verdict from before the break' : 'Verdict';
  return [
    `${from}: ${titled(checkWords[check].title, subject)}: ${statusWord(verdict)} (${evidenceWord(status, evidence)}).`,
    ...findings.map((each) => `  ${saidOf(each, scene)} (${each.kind})`),
    ...(facts.possible ? [`  ${possibleText(facts.possible)}`] : []),
    ...missing.map((each) => `  Missing: ${missingWords[each]}.`),
  ];
}

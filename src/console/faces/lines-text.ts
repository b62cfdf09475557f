import { subjectOf } from '../../model/ask.ts';
import type { Machine } from '../../model/machine.ts';
import type { Verdict } from '../../model/verdict.ts';
import type { FaceEvent, Heard, ShownAsk } from '../../session/operator.ts';
import { answerWords } from '../../words/answer-words.ts';
import { askedForTitle } from '../../words/asked-for.ts';
import { possibleText } from '../../words/cause/cause-words.ts';
import { secondsText } from '../../words/figures.ts';
import { saidOf } from '../../words/findings/catalogue.ts';
import { missingWords } from '../../words/missing-words.ts';
import { ownLineWords } from '../../words/own-line-words.ts';
import { checkWords, evidenceWords, statusWord } from '../../words/verdict-words.ts';
import { answerKeys } from './answer-keys.ts';
import { causeLines } from './cause-lines.ts';

/** What an event says as plain lines, each a sentence a screen reader can speak. Readings say nothing. */
export function linesFor(event: FaceEvent, machine: Machine): readonly string[] {
  switch (event.kind) {
    case 'ask':
      return askLines(event);
    case 'ended':
      return [endedLine(event)];
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
      return [event.text];
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
  2: 'evidence is missing, or the session was stopped; go on with --resume.',
} as const;

const titleOf = ({ ask }: ShownAsk): string => askedForTitle(ask.check);

function askLines(shown: ShownAsk): readonly string[] {
  const { id, again, ask, text, cautions, answers } = shown;
  const subject = subjectOf(ask);
  const round = ask.action === 'press' && ask.rounds > 1 ? `, press ${ask.round} of ${ask.rounds}` : '';
  return [
    '',
    `Ask ${id}. ${titleOf(shown)}${subject === undefined ? '' : `, ${subject}`}${round}.`,
    ...(again === undefined ? [] : [`This is ask ${again} again.`]),
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

export function endedLine({ by, answer }: Extract<FaceEvent, { readonly kind: 'ended' }>): string {
  const said = {
    seen: 'Seen.',
    answer: `Noted: ${answer ?? 'answered'}.`,
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
    `${from}: ${checkWords[check].title}, ${subject}: ${statusWord(check, status)} (${evidenceWords[evidence].word}).`,
    ...findings.map((each) => `  ${saidOf(each, scene)} (${each.kind})`),
    ...(facts.possible ? [`  ${possibleText(facts.possible)}`] : []),
    ...missing.map((each) => `  Missing: ${missingWords[each]}.`),
  ];
}

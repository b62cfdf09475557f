import type { Weight } from '../model/finding.ts';
import type { Subject } from '../model/machine.ts';
import type { Active } from '../model/reading.ts';
import type { CheckName, EvidenceLevel, Facts, Status } from '../model/verdict.ts';
import { listed } from './figures.ts';

/** Verdict words. None of them is a permission to run the machine. The mark is a shape to stand beside the word, never alone. */
export const statusWords = {
  proved: { word: 'Proved', mark: '■' },
  limited: { word: 'Proved with limitation', mark: '◧' },
  'not-tested': { word: 'Not tested', mark: '○' },
  inconclusive: { word: 'Inconclusive', mark: '?' },
  failed: { word: 'Failed', mark: '✕' },
} satisfies Record<Status, { readonly word: string; readonly mark: string }>;

/** What a status word is chosen by. */
export interface Judged {
  readonly check: CheckName;
  readonly status: Status;
  readonly facts?: Pick<Facts, 'rest'>;
}

/** An input that kept still at rest has proved nothing, so rest has words of its own in place of "proved", and no mark. */
export const isMerelySteady = ({ check, status }: Judged): boolean => check === 'rest' && status === 'proved';

/** Which way it was steady stands beside it: ACTIVE at rest is a thing to look into. */
export const steadyWords = {
  '0': 'Steady, inactive',
  '1': 'Steady, ACTIVE',
  '?': 'Steady',
} satisfies Record<Active, string>;

export const statusWord = (judged: Judged): string =>
  isMerelySteady(judged) ? steadyWords[judged.facts?.rest?.active ?? '?'] : statusWords[judged.status].word;

/** The same within a sentence. */
export function statusWordWithin(judged: Judged): string {
  const word = statusWord(judged);
  return word.charAt(0).toLowerCase() + word.slice(1);
}

export const statusMark = (judged: Judged): string =>
  isMerelySteady(judged) ? '' : statusWords[judged.status].mark;

export const weightWords = {
  fault: 'Fault',
  limitation: 'Limitation',
  note: 'Note',
} satisfies Record<Weight, string>;

/** The ladder, weakest first: what stands behind a statement. */
export const evidenceWords = {
  configured: { word: 'on file', means: 'A file or a setting says so. Nobody looked.' },
  told: { word: 'told', means: 'A person at the machine said so.' },
  commanded: {
    word: 'reported',
    means: 'The controller’s stream says so. Positions in it are commanded, not measured.',
  },
  edge: { word: 'seen once', means: 'An input changed inside the time window of its own ask.' },
  repeated: {
    word: 'seen three times or more',
    means: 'The same change came in three or more asks, once in each.',
  },
  measured: { word: 'measured', means: 'A person measured it with an instrument.' },
} satisfies Record<EvidenceLevel, { readonly word: string; readonly means: string }>;

export const noEvidence = { word: 'no evidence', means: 'Nothing was seen, told or read of it.' } as const;

/** What a verdict rests on. One that was reached by nothing rests on no file either. */
export const evidenceWord = (status: Status, evidence: EvidenceLevel): string =>
  evidence === 'configured' && (status === 'not-tested' || status === 'inconclusive')
    ? noEvidence.word
    : evidenceWords[evidence].word;

interface CheckWords {
  readonly title: string;
  readonly question: string;
  /** What it means for the machine that this was not tested. */
  readonly untested: string;
}

export const checkWords = {
  rest: {
    title: 'Rest',
    question: 'Is each input steady with hands off?',
    untested: 'An input that flickers may stop the machine without cause, or hide a press.',
  },
  press: {
    title: 'Press',
    question: 'Does each switch answer, on the right input, and only there?',
    untested: 'The switch may be dead, crossed with another or reversed; at rest all of these look healthy.',
  },
  'open-wire': {
    title: 'Open wire',
    question: 'Is a broken wire noticed?',
    untested: 'A broken wire or a loose plug may go unnoticed until the switch is needed.',
  },
  stop: {
    title: 'Stop',
    question: 'Does the status follow the stop, does drive power go, and does unlatching start nothing?',
    untested: 'It is not known whether the stop removes drive power.',
  },
  seek: {
    title: 'First seek',
    question: 'Does each axis run to the switch it should, in the right direction?',
    untested: 'An axis may run away from its home switch and into its end.',
  },
  homing: {
    title: 'Homing',
    question: 'Approach, trip, back off, slow approach, release: does each phase happen?',
    untested: 'The zero of the machine rests on nothing that was watched.',
  },
  repeat: {
    title: 'Repeatability',
    question: 'How far do trip points scatter?',
    untested: 'How well the machine finds its zero again is not known.',
  },
  stopping: {
    title: 'Stopping distance',
    question: 'Does an axis stop between its switch and its end?',
    untested: 'At speed an axis may run past its switch into the hard stop.',
  },
  envelope: {
    title: 'Envelope',
    question: 'Do soft limits, trips and hard stops lie in the right order, with room between?',
    untested: 'Soft limits may let an axis run into a switch or a hard stop.',
  },
  scale: {
    title: 'Scale and backlash',
    question: 'Is a commanded length a real one?',
    untested: 'Lengths, speeds and accelerations may be wrong by one and the same factor.',
  },
  soak: {
    title: 'Soak',
    question: 'How often does an input trip without cause over hours?',
    untested: 'Rare false trips would not have been seen in so short a time.',
  },
  troubleshoot: {
    title: 'Cause',
    question: 'Why does this input not do what it should?',
    untested: 'What is wrong with the input is not known.',
  },
} satisfies Record<CheckName, CheckWords>;

/** How many of one check are named. */
const most = 3;

/** Everything that the session ended before, in one sentence. */
export function notReached(lot: readonly (readonly [CheckName, readonly Subject[]])[]): string {
  const told = lot.map(([check, subjects]) => {
    const more = subjects.length - most;
    const named = more > 0 ? [...subjects.slice(0, most), `${more} more`] : subjects;
    return `${checkWords[check].title} (${listed(named)})`;
  });
  return `The session ended before these, and they are not tested: ${told.join('; ')}.`;
}

import type { CauseEvidence, CauseFacts } from '../../model/cause-facts.ts';
import type { FaultName } from '../../model/fault-names.ts';
import type { InputName } from '../../model/machine.ts';
import type { PossibleCauses } from '../../model/verdict.ts';
import { listed } from '../figures.ts';
import { missingWords } from '../missing-words.ts';
import { checkWords } from '../verdict-words.ts';
import { faultWords } from '../wiring/fault-words.ts';
import { deedWords } from './deed-words.ts';
import { outcomeText } from './outcome-words.ts';

const nothing = 'Nothing wrong on this input itself';

/** Which other input a fault concerns. */
const otherOf: Partial<Record<FaultName, (beside: InputName) => string>> = {
  'inputs-crossed': (beside) => `this one and ${beside}`,
  'ends-swapped': (beside) => `this one and ${beside}`,
  'signals-together': (beside) => `this one and ${beside}`,
  'wrong-terminal': (beside) => `that of ${beside}`,
  'plug-shifted': (beside) => `answering on ${beside}`,
};

function faultTitle(fault: FaultName, beside: InputName | undefined): string {
  const other = beside === undefined ? undefined : otherOf[fault]?.(beside);
  return other === undefined ? faultWords[fault].title : `${faultWords[fault].title}, ${other}`;
}

/** One cause: a fault, several at once, or nothing; with the other input that it concerns, where that is known. */
export const causeTitle = (cause: readonly FaultName[], beside: InputName | undefined): string =>
  cause.length === 0 ? nothing : cause.map((each) => faultTitle(each, beside)).join(', and at once: ');

export const fixText = (cause: readonly FaultName[]): string =>
  cause.length === 0
    ? 'Change nothing here; look at what else the complaint may come from.'
    : cause.map((each) => faultWords[each].fix).join(' ');

/** "about 97 %"; the belief rests on judged likelihoods and is no measurement. */
export const shareText = (share: number): string =>
  share >= 0.995 ? 'over 99 %' : share < 0.01 ? 'less than 1 %' : `about ${Math.round(100 * share)} %`;

/** "Press it by hand: answered: active, line open." */
export function evidenceText({ deed, outcome, value, earlier }: CauseEvidence): string {
  const unit = deed.startsWith('ohms') ? 'ohm' : deed.startsWith('volts') ? 'V' : 'mA';
  const figure = deed.startsWith('amps') && value !== undefined ? 1000 * value : value;
  const read = figure === undefined ? '' : ` (${Number(figure.toPrecision(4))} ${unit})`;
  const from = earlier ? ', from an earlier session' : '';
  return `${deedWords(deed).title}${from}: ${outcomeText(deed, outcome)}${read}.`;
}

/** What the search came to, in a sentence each. */
export function causeSentences(facts: CauseFacts): readonly string[] {
  const { causes, share, ended, assumed, wirings, history, beside } = facts;
  const titles = causes.map((each) => causeTitle(each, beside));
  const [first = nothing] = titles;
  const head =
    ended === 'stopped'
      ? `Broken off. So far: ${titles.join('; or: ')} (${shareText(share)}).`
      : ended === 'named'
        ? `Named: ${first} (${shareText(share)}).`
        : `No test that is left tells these apart, the likeliest first: ${titles.map((each, i) => `(${i + 1}) ${each}`).join('; ')} (together ${shareText(share)}).`;
  return [
    head,
    ...(assumed.length === 0 ? [] : [assumedText(assumed, wirings)]),
    history === 'fresh'
      ? 'Likelihoods as on a newly built machine.'
      : 'Likelihoods as on a machine that worked.',
    ...why(facts),
  ];
}

export const whatHappened = (cause: readonly FaultName[]): readonly string[] =>
  cause.map((each) => faultWords[each].what);

const assumedText = (assumed: CauseFacts['assumed'], wirings: CauseFacts['wirings']): string =>
  `Not declared and therefore assumed: the ${assumed.join(' and the ')}. Thought of: ${listed(
    wirings.map(({ name, contact }) => `${name.replaceAll('-', ' ')} (${contact})`),
    'or',
  )}.`;

const why = ({ notDone }: CauseFacts): readonly string[] =>
  notDone.length === 0
    ? []
    : [
        `Not done: ${notDone.map(({ deed, why: reason }) => `${deedWords(deed).title.toLowerCase()} (${missingWords[reason]})`).join('; ')}.`,
      ];

export const retestText = ({ retest }: CauseFacts): string =>
  `Test again once it is mended: ${listed(retest.map((each) => checkWords[each].title.toLowerCase()))}.`;

/** What agrees with everything that was seen of a switch, before any test that could tell it apart. */
export const possibleText = ({ causes, others, assumed }: PossibleCauses): string =>
  [
    `What can cause this, the likeliest first: ${causes.map((each) => causeTitle(each, undefined)).join('; ')}`,
    ...(others === 0 ? [] : [`; ${others} less likely`]),
    '.',
    ...(assumed.length === 0
      ? []
      : [` Computed for the usual ${assumed.join(' and ')}, which the file leaves out.`]),
  ].join('');

/** The exact command that goes on from a session. */
export const troubleshootCommand = (subject: string, session: string): string =>
  `tellwire troubleshoot ${subject} --from ${/^[\w./-]+$/.test(session) ? session : `"${session}"`}`;

/** How the section of the cause begins, by what the session has done about it. */
export const causeSectionWords = {
  searched:
    'What is likeliest after all that was seen. It rests on judged likelihoods of faults and on a computed circuit; only the re-test shows whether the fix was right.',
  notSearched:
    'This session tested what works and what does not. What a failure comes from was not looked for: what is possible stands with each switch, and a search finds which it is, by the test that tells most for its minutes first. It begins from what was seen here.',
  howTo:
    'Open a terminal in the folder of this session, the one with journal.ndjson in it, and copy a line. As it stands it lists what to test next; with --port and the port added, the tests are asked for at the machine, one by one.',
  allKnown:
    'What each failed switch needs stands under "Changes to make", so no cause has to be looked for. Should a re-test fail all the same, look for one then.',
  nothingFailed: 'No switch failed its press or its open wire, so no cause was looked for.',
} as const;

export const searchHint =
  'To look for the cause of what failed, from what was seen here (add --port to do it at the machine):';

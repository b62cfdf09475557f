import {
  causeSectionWords,
  causeSentences,
  causeTitle,
  evidenceText,
  fixText,
  retestText,
  troubleshootCommand,
  whatHappened,
} from '../../words/cause/cause-words.ts';
import { listed } from '../../words/figures.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { type Block, list, strong, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import type { VerdictRecord } from '../schema/verdict.ts';
import { failedSwitches, toSearch } from '../to-search.ts';

/** What a search came to, with all it rests on; without one, how to begin it for each switch that failed and whose mending is not known yet. */
export function causeBlocks({ verdicts, changes }: ReportRecord): readonly Block[] {
  const found = verdicts.flatMap(searched);
  if (found.length > 0) return [text(causeSectionWords.searched), ...found];
  const failed = failedSwitches(verdicts);
  if (failed.length === 0) return [text(causeSectionWords.nothingFailed)];
  const open = toSearch(failed, changes);
  if (open.length === 0) return [text(causeSectionWords.allKnown)];
  // Whoever forges a record writes no command for the one who copies it.
  const lines = open.filter(isSubject).map((subject) => troubleshootCommand(subject, '.'));
  return [
    text(causeSectionWords.notSearched),
    text(causeSectionWords.howTo),
    ...(lines.length === 0 ? [] : [{ kind: 'commands', lines } as const]),
  ];
}

/** As a machine file may name an input and its switch. */
const isSubject = (subject: string): boolean => /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)?$/.test(subject);

function searched({ subject, facts }: VerdictRecord): readonly Block[] {
  const { cause } = facts;
  if (!cause) return [];
  const [head = '', ...more] = causeSentences(cause);
  const { causes, evidence, ruledOut } = cause;
  const speaking = (speaks: 'for' | 'against'): readonly Block[] => {
    const said = evidence.filter((each) => each.speaks === speaks).map(evidenceText);
    return said.length === 0 ? [] : [text(speaks === 'for' ? 'For it:' : 'Against it:'), list(said)];
  };
  const fixes = causes.map((each) => {
    const what = whatHappened(each).join(' ');
    return `${causeTitle(each, cause.beside)}. ${what === '' ? '' : `${what} `}To mend it: ${fixText(each)}`;
  });
  const others = evidence.filter(({ speaks }) => speaks === 'neither').map(evidenceText);
  const titles = ruledOut.map((each) => faultWords[each].title.toLowerCase());
  return [
    {
      kind: 'group',
      heading: subject,
      blocks: [
        strong(head),
        ...more.map(text),
        list(fixes),
        ...speaking('for'),
        ...speaking('against'),
        ...(others.length === 0 ? [] : [text('Seen too, and telling neither way:'), list(others)]),
        ...(titles.length === 0 ? [] : [text(`Ruled out: ${listed(titles)}.`)]),
        text(retestText(cause)),
      ],
    },
  ];
}

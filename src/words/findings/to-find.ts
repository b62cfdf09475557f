import type { CauseFacts } from '../../model/cause-facts.ts';
import type { CheckName } from '../../model/check-name.ts';
import type { Finding } from '../../model/finding.ts';
import { causeTitle, fixText, shareText } from '../cause/cause-words.ts';
import { listed } from '../figures.ts';
import { checkWords } from '../verdict-words.ts';
import { findingWords } from './catalogue.ts';
import type { Change } from './entry.ts';

/** How many causes that nothing told apart a row names. */
const most = 3;

const retestOf = (subject: string, checks: readonly CheckName[]): string =>
  `${listed(checks.map((check) => checkWords[check].title.toLowerCase()))} of ${subject}`;

/** Faults that no one change is known to mend: what they are, and where to look first. The last one is the most particular. */
export function toFind(
  faults: readonly [Finding, ...Finding[]],
  subject: string,
  checks: readonly CheckName[],
): Change {
  const [next = ''] = findingWords[faults.at(-1)?.kind ?? faults[0].kind].next;
  return {
    what: 'cause',
    from: [...new Set(faults.map(({ kind }) => findingWords[kind].title))].join('; '),
    to: 'put right, once its cause is known',
    why: `No single change is known to mend it. Look first: ${next}`,
    retest: retestOf(subject, checks),
  };
}

/** What a search has named, or could not tell apart: the likeliest is mended first. */
export function asNamed({ causes, share, retest, beside }: CauseFacts, subject: string): Change {
  const [first = [], ...others] = causes;
  const titles = causes.slice(0, most).map((each) => causeTitle(each, beside));
  return {
    what: 'cause',
    from: [...titles, ...(causes.length > most ? [`${causes.length - most} more`] : [])].join('; or: '),
    to: fixText(first),
    why:
      others.length === 0
        ? `The search named it (${shareText(share)}).`
        : 'The search could not tell these apart; begin with the likeliest.',
    retest: retestOf(subject, retest),
  };
}

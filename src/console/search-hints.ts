import { allSwitches } from '../model/machine.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { changesFor } from '../report/changes.ts';
import { failedSwitches, toSearch } from '../report/to-search.ts';
import { searchHint, troubleshootCommand } from '../words/cause/cause-words.ts';

/** For each switch that failed and whose mending is not known yet, the exact command that looks for the cause and begins from what this session has shown. */
export function searchHints(
  facts: Pick<SessionFacts, 'machine' | 'verdicts'>,
  session: string,
): readonly string[] {
  const { machine, verdicts } = facts;
  const wanted = toSearch(failedSwitches(verdicts), changesFor(facts));
  const open = allSwitches(machine).filter(({ subject }) => wanted.includes(subject));
  const isSearched = verdicts.some(({ check }) => check === 'troubleshoot');
  if (open.length === 0 || isSearched) return [];
  return [searchHint, ...open.map(({ subject }) => `  ${troubleshootCommand(subject, session)}`)];
}

import { allSwitches } from '../model/machine.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { searchHint, troubleshootCommand } from '../words/cause/cause-words.ts';

/** For each switch that failed, the exact command that looks for the cause and begins from what this session has shown. */
export function searchHints(
  { machine, verdicts }: Pick<SessionFacts, 'machine' | 'verdicts'>,
  session: string,
): readonly string[] {
  const failed = allSwitches(machine)
    .map(({ subject }) => subject)
    .filter((subject) =>
      verdicts.some(
        (each) =>
          each.subject === subject &&
          each.status === 'failed' &&
          (each.check === 'press' || each.check === 'open-wire'),
      ),
    );
  const isSearched = verdicts.some(({ check }) => check === 'troubleshoot');
  if (failed.length === 0 || isSearched) return [];
  return [searchHint, ...failed.map((subject) => `  ${troubleshootCommand(subject, session)}`)];
}

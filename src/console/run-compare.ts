import { buildRecord } from '../report/build-record.ts';
import { compareText } from '../report/compare/compare-text.ts';
import { compared } from '../report/compare/compared.ts';
import { replay } from '../session/replay.ts';
import { withSession } from './bundled.ts';
import { showJson } from './show.ts';

/** Judges both sessions by the rules of today, so that only the machine can differ. 1 where they differ. */
export function comparedSessions(old: string, now: string, json: boolean): 0 | 1 {
  const recordOf = (path: string) => withSession(path, (folder) => buildRecord(replay(folder).facts));
  const found = compared(recordOf(old), recordOf(now));
  if (json) showJson(found);
  else process.stdout.write(compareText(found));
  return found.differences.length === 0 ? 0 : 1;
}

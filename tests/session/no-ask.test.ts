import { afterAll, expect, it } from 'vitest';
import type { CheckName } from '../../src/model/verdict.ts';
import { replay } from '../../src/session/replay.ts';
import { found, remove, temporaryFolder, virtualSession } from './virtual-session.ts';

const folders: string[] = [];
afterAll(() => folders.forEach(remove));

const run = async (checks: readonly CheckName[]) => {
  const folder = temporaryFolder();
  folders.push(folder);
  return { folder, outcome: await virtualSession({ folder, session: { checks, restSeconds: 2 } }) };
};

it('a check that asks nothing is judged, and judged again to the same, though nobody was asked anything', async () => {
  const { folder, outcome } = await run(['envelope']);
  expect(outcome.events.filter(({ kind }) => kind === 'ask')).toEqual([]);
  // Limits that fit on paper prove nothing: no homing was watched.
  expect(found(outcome)).toContain('envelope X: inconclusive');
  expect(replay(folder).facts.verdicts.map(({ subject, status }) => `${subject} ${status}`)).toContain(
    'X inconclusive',
  );
  expect(outcome.exit).toBe(2);
});

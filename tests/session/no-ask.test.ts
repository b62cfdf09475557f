import { afterAll, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import type { CheckName } from '../../src/model/verdict.ts';
import { replay } from '../../src/session/replay.ts';
import { found, remove, temporaryFolder, virtualSession } from './virtual-session.ts';

const folders: string[] = [];
afterAll(() => folders.forEach(remove));

const run = async (checks: readonly CheckName[], machineText = scenarioFile) => {
  const folder = temporaryFolder();
  folders.push(folder);
  return {
    folder,
    outcome: await virtualSession({ folder, session: { checks, restSeconds: 2, machineText } }),
  };
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

it('a seek that no home switch of the file makes possible is said to be untested, and the session does not end as shown', async () => {
  const homeless = scenarioFile.replaceAll(/^ +axis: [XYZ]\n/gm, '');
  const { outcome } = await run(['seek', 'homing'], homeless);
  for (const axis of ['X', 'Y', 'Z'])
    for (const check of ['seek', 'homing']) expect(found(outcome)).toContain(`${check} ${axis}: not-tested`);
  expect(outcome.exit).toBe(2);
});

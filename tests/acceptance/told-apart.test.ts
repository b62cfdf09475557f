import { afterAll, describe, expect, it } from 'vitest';
import { faultNames, needsPortal } from '../../src/bench/faults.ts';
import { registered } from '../../src/diagnose/checks/registry.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { remove, temporaryFolder, virtualSession } from '../session/virtual-session.ts';
import { checksOfTable, mustSay, plantedFaults, redRows, rows, saidBy, same } from './fault-table.ts';
import { tablePage } from './table-page.ts';

/** What moves is told apart case by case, in tables of its own. */
const motionChecks = ['seek', 'homing', 'repeat', 'stopping', 'envelope', 'scale'];

const sessions = new Map<string, Promise<readonly Verdict[]>>();

/** The whole machine commissioned once for each planted fault; its four rows look at the same session. */
function found(plant: string): Promise<readonly Verdict[]> {
  const begun = sessions.get(plant) ?? commissioned(plant);
  sessions.set(plant, begun);
  return begun;
}

async function commissioned(plant: string): Promise<readonly Verdict[]> {
  const folder = temporaryFolder();
  try {
    const faults = plant === '' ? [] : [plant];
    // Only bounce needs a hundred reports a second to show; fifty take half the time.
    const telling = { rate: plant.startsWith('chatters') ? 100 : 50 };
    const { facts } = await virtualSession({
      folder,
      bench: { faults, telling },
      session: { restSeconds: 5, checks: checksOfTable },
    });
    return facts.verdicts;
  } finally {
    remove(folder);
  }
}

describe('what each check tells of each fault', () => {
  it('has a row for every fault that can be planted on this machine, under every check of its inputs', () => {
    expect([...new Set(plantedFaults.map(({ plant }) => plant.split(':')[0]))].sort()).toEqual(
      faultNames.filter((name) => !needsPortal(name)).sort(),
    );
    expect([...checksOfTable, ...motionChecks]).toEqual(registered);
  });

  it.each(checksOfTable)('is nothing on a sound machine: %s', async (check) => {
    expect(saidBy(await found(''), check)).toEqual([]);
  });

  it.each(rows)('is this and nothing more: $plant, $check', async (row) => {
    expect(saidBy(await found(row.plant), row.check)).toEqual(mustSay(row));
  });
});

describe('the table itself', () => {
  it('is the committed page for readers; -u writes it anew', async () => {
    await expect(tablePage()).toMatchFileSnapshot('../../docs/what-is-told-apart.md');
  });

  it('turns exactly two rows red where two unlike expectations are exchanged', async () => {
    const all = new Map<string, readonly Verdict[]>();
    for (const { plant } of plantedFaults) all.set(plant, await found(plant));
    expect(redRows(rows, all)).toEqual([]);
    let exchanged = 0;
    for (const [i, one] of rows.entries())
      for (const [j, other] of rows.entries()) {
        if (j <= i || same(mustSay(one), mustSay(other))) continue;
        const wrong = [
          { ...one, tells: other.tells },
          { ...other, tells: one.tells },
        ];
        // Looking through the whole table each time would show no more: a row is compared by itself.
        const table =
          exchanged++ % 500 === 0 ? [...rows.filter((_, k) => k !== i && k !== j), ...wrong] : wrong;
        expect(redRows(table, all)).toEqual(wrong);
      }
    expect(exchanged).toBeGreaterThan(1000);
  }, 300_000);
});

afterAll(() => sessions.clear());

import { describe, expect, it } from 'vitest';
import { cases, notApart, notPlayed, played } from './all-cases.ts';
import { casesPage } from './cases-page.ts';
import { type SeekCase, saidOf } from './seek-case.ts';

/** One finding of it can have been two things. */
const isOpen = (line: string): boolean => /\([^)]*, [^)]*\)/.test(line);

async function saidOfCase({ plays }: SeekCase): Promise<readonly string[]> {
  const said = await Promise.all(plays.map(saidOf));
  return said.map(({ found, dangers }) => [...found, ...dangers].join('\n'));
}

describe('each way a seek can go wrong', () => {
  it('is played, by its own name; what of it is not played is said', () => {
    // Counted by hand in the knowledge of the trade: thirty-nine ways a seek and a homing can be.
    expect(cases).toHaveLength(39);
    const names = cases.map(({ name }) => name);
    expect(new Set(names).size).toBe(39);
    expect(Object.keys(notPlayed).filter((name) => !names.includes(name))).toEqual([]);
    expect(Object.keys(notPlayed)).toHaveLength(3);
  });

  it('stands on the committed page for readers; -u writes it anew', async () => {
    await expect(casesPage()).toMatchFileSnapshot('../../../docs/seeks-told-apart.md');
  });

  it.each(played)(
    'is this and nothing more: $name; $because',
    async ({ play }) => {
      const { found, dangers } = await saidOf(play);
      expect(found).toEqual(play.found);
      expect(dangers).toEqual(play.dangers ?? []);
    },
    60_000,
  );

  it('is told from every other, but for exactly those of which it is said why not', async () => {
    const said = new Map<string, readonly string[]>();
    for (const each of cases) said.set(each.name, await saidOfCase(each));
    const alike = (name: string) =>
      [...said].some(([other, its]) => other !== name && its.some((one) => said.get(name)?.includes(one)));
    const together = cases
      .map(({ name }) => name)
      .filter((name) => alike(name) || said.get(name)?.some(isOpen));
    expect(together.sort()).toEqual(Object.keys(notApart).sort());
  }, 120_000);
});

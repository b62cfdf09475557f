import { writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { committedTable, solvedTable, tableFile, tableText } from './circuit-table.ts';
import { hasNgspice } from './run.ts';

/** Set by scripts/write-circuit-table.mjs. */
const writes = process.env['WRITE_CIRCUIT_TABLE'] === 'yes';

/** V; another version of ngspice rounds otherwise. */
const likeEnough = 0.005;

/** The largest difference of two tables, V; without end where one has a voltage and the other has none. */
function apart(one: unknown, other: unknown): number {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other);
  if (Array.isArray(one) && Array.isArray(other) && one.length === other.length)
    return Math.max(0, ...one.map((each, at) => apart(each, other[at])));
  if (isRecord(one) && isRecord(other))
    return apart(Object.entries(one).flat(), Object.entries(other).flat());
  return one === other ? 0 : Number.POSITIVE_INFINITY;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

describe.skipIf(!hasNgspice)('the volts the bench plays its circuits by', () => {
  // Not a test of anything: there only where the script asks for it.
  if (writes)
    it('are written anew', { timeout: 900_000 }, () => {
      writeFileSync(tableFile, tableText(solvedTable()));
    });

  it('are what ngspice makes of the same netlists: every sound wiring and every ninth of the faults', {
    timeout: 300_000,
  }, () => {
    let count = 0;
    const again = solvedTable((_, fault) => fault === undefined || count++ % 9 === 0);
    const committed = committedTable();
    let compared = 0;
    for (const { wiring, contact, reads, sound, faults } of again) {
      const there = committed.find((each) => each.wiring === wiring && each.contact === contact);
      expect({ wiring, reads }).toEqual({ wiring, reads: there?.reads });
      expect(apart(sound, there?.sound), `${wiring}, ${contact}, sound`).toBeLessThan(likeEnough);
      for (const [name, spread] of Object.entries(faults)) {
        const kept = Object.entries(there?.faults ?? {}).find(([each]) => each === name)?.[1];
        expect(apart(spread, kept), `${wiring}, ${contact}, ${name}`).toBeLessThan(likeEnough);
        compared++;
      }
    }
    console.log(`${again.length} wirings and ${compared} faults that change a pin solved again`);
    expect(compared).toBeGreaterThan(50);
  });
});

import { describe, expect, it } from 'vitest';
import type { Status } from '../../src/model/verdict.ts';
import { exitCodeFor } from '../../src/report/exit-code.ts';

const table: readonly [statuses: readonly Status[], stopped: boolean, exit: 0 | 1 | 2][] = [
  [[], false, 2],
  [[], true, 2],
  [['proved'], false, 0],
  [['proved', 'proved'], false, 0],
  [['proved'], true, 2],
  [['proved', 'limited'], false, 1],
  [['limited'], true, 1],
  [['failed'], false, 1],
  [['failed'], true, 1],
  [['proved', 'inconclusive'], false, 2],
  [['proved', 'not-tested'], false, 2],
  [['inconclusive', 'failed'], false, 1],
  [['not-tested', 'limited'], false, 1],
  [['not-tested', 'inconclusive'], true, 2],
];

describe('the exit code', () => {
  it.each(table)('of %j, stopped %s, is %i', (statuses, stopped, exit) => {
    expect(
      exitCodeFor(
        statuses.map((status) => ({ status })),
        stopped,
      ),
    ).toBe(exit);
  });
});

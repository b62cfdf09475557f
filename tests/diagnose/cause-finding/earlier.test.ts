import { describe, expect, it } from 'vitest';
import { earlierEvidence } from '../../../src/diagnose/cause-finding/earlier.ts';
import type { Active, Level } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';
import type { Verdict } from '../../../src/model/verdict.ts';
import { machineFrom } from '../stage.ts';

const machine = machineFrom(
  'machine: m\ninputs:\n  a: { duty: [limit], contact: normally closed, circuit: { kind: contact to ground } }\naxes:\n  X: {}\n',
);
const rest = (level: Level, active: Active): Verdict => ({
  check: 'rest',
  subject: 'a',
  status: 'proved',
  evidence: 'commanded',
  findings: [],
  missing: [],
  facts: { rest: { level, active, quietFor: ms(10_000), edges: 0 } },
  traces: [],
});

describe('what an earlier session hands on to a search', () => {
  it.each([
    ['both', 'L', '0', 'conducting 0'],
    ['levels', 'L', '?', 'conducting'],
    ['active', '?', '1', '1'],
  ] as const)(
    'says that the stream told %s, beside what was seen with it',
    (told, level, active, outcome) => {
      expect(earlierEvidence([rest(level, active)], machine, 'a')).toMatchObject({
        told,
        earlier: [{ deed: 'rest', outcome }],
      });
    },
  );

  it('says nothing of a stream that showed nothing of the switch', () => {
    expect(earlierEvidence([], machine, 'a')).not.toHaveProperty('told');
  });
});

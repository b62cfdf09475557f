import { describe, expect, it } from 'vitest';
import { causeLine, causeLines } from '../../src/console/faces/cause-lines.ts';
import { jsonEvent } from '../../src/console/faces/json-events.ts';
import { searchHints } from '../../src/console/search-hints.ts';
import type { CauseFacts } from '../../src/model/cause-facts.ts';
import { share } from '../../src/model/units.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { machineFrom } from '../diagnose/stage.ts';

const cause: CauseFacts = {
  causes: [['signal-core-open']],
  share: share(0.99),
  ended: 'named',
  wirings: [{ name: 'normally-closed-to-ground', contact: 'normally closed' }],
  assumed: [],
  history: 'worked',
  evidence: [
    { deed: 'press', outcome: 'still', speaks: 'for' },
    { deed: 'tug', outcome: 'open 1', speaks: 'neither' },
    { deed: 'ohms-signal-core', outcome: 'bin 2', speaks: 'for' },
  ],
  notDone: [],
  ruledOut: ['contact-never-makes'],
  retest: ['press', 'open-wire'],
};
const told = { kind: 'cause', subject: 'x-home', cause, restored: false } as const;

describe('a cause', () => {
  it('is one JSON object whose head programs rely on', () => {
    const line = jsonEvent(told) ?? {};
    expect(Object.keys(line).slice(0, 3)).toEqual(['kind', 'named', 'inseparable']);
    expect(line).toMatchObject({ kind: 'cause', named: ['signal-core-open'], inseparable: false });
  });

  it('names every fault of a set that nothing tells apart, and which of them would be there at once', () => {
    const several = {
      ...cause,
      ended: 'inseparable',
      causes: [['wrong-blade', 'polarity-inverted'], []],
    } as const;
    expect(causeLine({ ...told, cause: several })).toMatchObject({
      named: ['wrong-blade', 'polarity-inverted'],
      inseparable: true,
      together: [['wrong-blade', 'polarity-inverted'], []],
    });
  });

  it('is told in sentences with what speaks for it, the fix and the re-test', () => {
    const lines = causeLines(told).join('\n');
    expect(lines).toMatch(/Cause, x-home: Named: Signal core broken/);
    expect(lines).toMatch(/For it: Press it by hand: no answer/);
    expect(lines).toMatch(/over 1 Mohm/);
    expect(lines).toMatch(/Fix: /);
    expect(lines).toMatch(/Ruled out: contact never closes/);
    expect(lines).toMatch(/Test again once it is mended: press and open wire/);
    expect(lines).not.toMatch(/Tug/);
  });
});

describe('a commissioning that failed somewhere', () => {
  const machine = machineFrom(
    'machine: m\ninputs:\n  a: { duty: [limit] }\n  b: { duty: [limit] }\naxes:\n  X: {}\n',
  );
  const verdict = (check: Verdict['check'], subject: string, status: Verdict['status']): Verdict => ({
    check,
    subject,
    status,
    evidence: 'edge',
    findings: [],
    missing: [],
    facts: {},
    traces: [],
  });

  it('names the exact command for each switch that failed, and for no other', () => {
    const verdicts = [verdict('press', 'a', 'failed'), verdict('press', 'b', 'proved')];
    const hints = searchHints({ machine, verdicts }, 'sessions/one');
    expect(hints.slice(1)).toEqual(['  tellwire troubleshoot a --from sessions/one']);
    expect(searchHints({ machine, verdicts: [verdict('press', 'a', 'proved')] }, 's')).toEqual([]);
  });

  it('quotes a folder that a shell would take apart', () => {
    const hints = searchHints({ machine, verdicts: [verdict('press', 'a', 'failed')] }, 'my sessions/one');
    expect(hints.at(-1)).toBe('  tellwire troubleshoot a --from "my sessions/one"');
  });
});

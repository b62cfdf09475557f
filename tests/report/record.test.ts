import { describe, expect, it } from 'vitest';
import { weightOf } from '../../src/model/finding.ts';
import { share } from '../../src/model/units.ts';
import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import { json } from '../../src/report/json.ts';
import { parseRecord, reportRecordSchema } from '../../src/report/record.ts';
import { faultWords } from '../../src/words/wiring/fault-words.ts';
import { oneOfEach } from '../words/one-of-each.ts';
import { hostile } from './hostile.ts';
import { weekend } from './weekend.ts';

const record = buildRecord(weekend);
const named = {
  share: share(0.99),
  ended: 'named',
  wirings: [],
  assumed: [],
  history: 'fresh',
  evidence: [],
  notDone: [],
  ruledOut: [],
  retest: ['press', 'open-wire'],
} as const;

describe('the record of a session', () => {
  it.each([
    ['a usual session', weekend],
    ['a hostile one', hostile],
    ['an empty one', { ...weekend, verdicts: [], dialogue: [], sent: [] }],
  ])('of %s reads back from its JSON as it was written', (_name, facts) => {
    const built = buildRecord(facts);
    const read = parseRecord(json(built));
    expect(read).toEqual(built);
    for (const format of Object.values(formats)) expect(format(read)).toEqual(format(built));
  });

  it('holds every kind of finding with its own facts, and none with a fact too many', () => {
    const findings = Object.values(oneOfEach);
    const [first] = weekend.verdicts;
    if (!first) throw new Error('the fixture has verdicts');
    const built = buildRecord({ ...weekend, verdicts: [{ ...first, findings }] });
    expect(parseRecord(json(built)).verdicts[0]?.findings.map(({ facts }) => facts)).toEqual(findings);
    const text = json(built).replace('"kind": "sticks"', '"kind": "sticks", "smell": "burnt"');
    expect(() => parseRecord(text)).toThrow(/smell/);
  });

  it('refuses a record of another schema, or with a field it does not know', () => {
    expect(reportRecordSchema.safeParse({ ...record, schemaVersion: 2 }).success).toBe(false);
    expect(reportRecordSchema.safeParse({ ...record, extra: 1 }).success).toBe(false);
  });

  it('is governed by its worst line', () => {
    expect(record.worst).toBe('failed');
    const proved = weekend.verdicts.filter(({ status }) => status === 'proved');
    expect(buildRecord({ ...weekend, verdicts: proved }).worst).toBe('proved');
    expect(buildRecord({ ...weekend, verdicts: proved, stopped: true }).worst).toBe('not-tested');
  });

  it('is not clean while something is still out, whatever the verdicts say', () => {
    const verdicts = weekend.verdicts.filter(({ status }) => status === 'proved');
    const built = buildRecord({ ...weekend, verdicts, register: [{ subject: 'x-home', at: 'switch' }] });
    expect(built.session.exit).toBe(2);
    expect(built.worst).not.toBe('proved');
    for (const format of ['md', 'html'] as const)
      expect(formats[format](built).text).toContain('STILL UNPLUGGED');
  });

  it('keeps what the file declares and what was found in fields of their own', () => {
    const row = record.inputMap.find(({ subject }) => subject === 'x-far');
    expect(row?.declared.contact).toBe('normally closed');
    expect(row?.found).toEqual({
      contact: 'normally open',
      answersOn: 'x-far',
      restLevel: 'L',
      restActive: '0',
      polarity: 'right',
      breakNoticed: false,
    });
    const untouched = record.inputMap.find(({ subject }) => subject === 'y-limits/y-max');
    expect(untouched?.found).toEqual({ restLevel: 'L', restActive: '0' });
  });

  it('lists each change once, faults first, with what must be tested again', () => {
    expect(record.changes.map(({ subject, what }) => `${subject} ${what}`)).toEqual([
      'z-top setting',
      'x-far wire',
      'x-far setting',
      'door cause',
    ]);
    for (const { retest } of record.changes) expect(retest).toMatch(/rest, press and open wire/);
  });

  it('leaves no fault without a row, though nobody knows yet what mends it', () => {
    const [first] = weekend.verdicts;
    if (!first) throw new Error('the fixture has verdicts');
    for (const [kind, finding] of Object.entries(oneOfEach)) {
      const verdict = { ...first, subject: 'x-home', status: 'failed' as const, findings: [finding] };
      const { changes } = buildRecord({ ...weekend, verdicts: [verdict] }, { circuits: false });
      if (weightOf[finding.kind] === 'fault') expect([kind, changes.length > 0]).toEqual([kind, true]);
    }
  });

  it('has what a search named among the changes, with how it is mended', () => {
    const [first] = weekend.verdicts;
    if (!first) throw new Error('the fixture has verdicts');
    const verdict = {
      ...first,
      check: 'troubleshoot' as const,
      subject: 'x-home',
      status: 'failed' as const,
      findings: [],
      facts: { cause: { ...named, causes: [['signal-core-open' as const]] } },
    };
    const { changes } = buildRecord({ ...weekend, verdicts: [verdict] }, { circuits: false });
    expect(changes).toEqual([
      {
        subject: 'x-home',
        what: 'cause',
        from: faultWords['signal-core-open'].title,
        to: faultWords['signal-core-open'].fix,
        why: expect.stringContaining('about 99 %'),
        retest: 'press and open wire of x-home',
      },
    ]);
  });

  it('gives the same record and the same bytes from the same facts', () => {
    const again = buildRecord(structuredClone(weekend));
    for (const format of Object.values(formats)) expect(format(again)).toEqual(format(record));
  });
});

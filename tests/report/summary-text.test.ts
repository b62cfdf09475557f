import { describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { summaryText } from '../../src/report/summary-text.ts';
import { weekend } from './weekend.ts';

describe('the summary at the end of a run', () => {
  const record = buildRecord(weekend);
  const text = summaryText(record);

  it('never leaves a failed switch without a change to make or a next step', () => {
    const failed = record.verdicts.filter(
      ({ status, subject }) => status === 'failed' && subject !== 'stream',
    );
    expect(failed.length).toBeGreaterThan(0);
    for (const subject of new Set(failed.map((each) => each.subject))) {
      const lines = text.split('\n');
      const at = lines.findIndex((line) => line.startsWith('Failed') && line.includes(subject));
      const block = lines.slice(
        at + 1,
        at + 1 + lines.slice(at + 1).findIndex((line) => !line.startsWith(' ')),
      );
      const hasChange = record.changes.some((change) => change.subject === subject);
      expect([subject, hasChange || block.some((line) => line.trim().startsWith('Next: '))]).toEqual([
        subject,
        true,
      ]);
    }
  });
});

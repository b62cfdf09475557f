import { describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { html } from '../../src/report/html.ts';
import { markdown } from '../../src/report/markdown.ts';
import { causeBlocks } from '../../src/report/sections/cause.ts';
import { weekend } from './weekend.ts';

const record = buildRecord(weekend, { circuits: false });
const forged = (subject: string) => ({
  ...record,
  verdicts: record.verdicts.map((each) => ({ ...each, subject })),
});
const commandsIn = (of: typeof record) =>
  causeBlocks(of).flatMap((block) => (block.kind === 'commands' ? block.lines : []));

describe('the cause, in a session that looked for none', () => {
  it('is begun by a command that can be copied as it stands, one for each switch that failed', () => {
    expect(commandsIn(record)).toEqual([
      'tellwire troubleshoot z-top --from .',
      'tellwire troubleshoot door --from .',
    ]);
    expect(markdown(record)).toContain('```\ntellwire troubleshoot z-top --from .\n');
    expect(html(record)).toContain('<pre>tellwire troubleshoot z-top --from .\n');
  });

  it('is said to be looked for by none where nothing failed, and is not called likeliest', () => {
    const verdicts = record.verdicts.filter(({ status }) => status !== 'failed');
    const said = JSON.stringify(causeBlocks({ ...record, verdicts }));
    expect(said).toMatch(/no cause was looked for/);
    expect(said + JSON.stringify(causeBlocks(record))).not.toMatch(/likeliest after all/);
  });

  it('puts no word of a forged record into a command', () => {
    for (const subject of ['x; reboot', '$(reboot)', '--out', 'a\nb', '``` x'])
      expect(commandsIn(forged(subject))).toEqual([]);
  });
});

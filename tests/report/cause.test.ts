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
    expect(commandsIn(record)).toEqual(['tellwire troubleshoot door --from .']);
    expect(markdown(record)).toContain('```\ntellwire troubleshoot door --from .\n');
    expect(html(record)).toContain('<pre>tellwire troubleshoot door --from .</pre>');
  });

  it('is not looked for on a switch of which all that has to be changed is known', () => {
    // The polarity of z-top is the wrong way round, which needs no search.
    const known = record.changes.filter(({ what }) => what !== 'cause');
    const both = [...record.changes, ...known.map((each) => ({ ...each, subject: 'door' }))];
    expect(commandsIn({ ...record, changes: both })).toEqual(['tellwire troubleshoot door --from .']);
    const all = { ...record, changes: both.filter(({ what }) => what !== 'cause') };
    expect(commandsIn(all)).toEqual([]);
    expect(JSON.stringify(causeBlocks(all))).toMatch(/so no cause has to be looked for/);
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

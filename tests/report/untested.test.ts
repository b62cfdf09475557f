import { describe, expect, it } from 'vitest';
import type { SessionFacts } from '../../src/model/session-facts.ts';
import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import { plain } from '../../src/report/markdown-text.ts';
import { weekend } from './weekend.ts';
import { workshop } from './workshop.ts';

const whats = (facts: SessionFacts) => buildRecord(facts).untested.map(({ what }) => what);
const proved = { ...weekend, verdicts: weekend.verdicts.filter(({ status }) => status === 'proved') };

describe('what was not tested', () => {
  it.each([
    ['a usual session', weekend],
    ['one in which everything asked for is proved', proved],
    ['one without any verdict', { ...weekend, verdicts: [] }],
    ['one that asked for nothing', { ...weekend, verdicts: [], asked: { ...weekend.asked, checks: [] } }],
  ])('has its page in every format of %s', (_name, facts) => {
    const record = buildRecord(facts);
    expect(record.untested.length).toBeGreaterThan(0);
    expect(formats.md(record).text).toContain('## **NOT TESTED**');
    expect(formats.html(record).text).toMatch(/<section id="untested" class="own-page"><h2>NOT TESTED<\/h2>/);
    const md = formats.md(record).text.split('## **NOT TESTED**')[1]?.split('\n## ')[0] ?? '';
    const page = formats.html(record).text.split('<section id="untested"')[1]?.split('</section>')[0] ?? '';
    expect(md.match(/^\| .* \|$/gm)).toHaveLength(record.untested.length + 2);
    expect(page.match(/<tr>/g)).toHaveLength(record.untested.length + 1);
    for (const { what, reason, consequence } of record.untested) {
      expect(md).toContain(plain(what));
      expect(what).not.toBe('');
      expect(reason).not.toBe('');
      expect(consequence).not.toBe('');
    }
  });

  it('names homing, envelope and scale of a machine whose motion nobody watched', () => {
    expect(whats(proved).join()).toMatch(/First seek.*Homing.*Repeatability.*Envelope.*Scale/);
    const md = formats.md(buildRecord(proved)).text;
    expect(md).toMatch(/## Homing\n\nNOT TESTED/);
    expect(md).toMatch(/## Envelope\n\nNOT TESTED/);
    expect(md).toMatch(/## Coordinate sketch\n\nNOT TESTED/);
  });

  it('gives each missing piece of evidence with its reason', () => {
    const lines = buildRecord(weekend).untested;
    const of = (subject: string, check: string) =>
      lines.find((each) => each.subject === subject && each.check === check)?.reason;
    expect(of('y-limits/y-max', 'press')).toMatch(/out of reach/);
    expect(of('door', 'open-wire')).toMatch(/voltage on the plug is unknown/);
    expect(of('y-limits/y-min', 'open-wire')).toMatch(/^Inconclusive: .*plug out is missing/);
  });

  it('does not take a status for a function: the door and the probe stay untested', () => {
    expect(whats(weekend).join()).toMatch(/Door function.*Probing/);
  });

  it('says so where the machine file declares no stop input', () => {
    const inputs = workshop.inputs.filter(({ name }) => name !== 'stop');
    expect(whats({ ...weekend, machine: { ...workshop, inputs } })).toContain(
      'Emergency stop: status and function',
    );
  });

  it('names a switch that a shortened session left out', () => {
    const verdicts = weekend.verdicts.filter(({ subject }) => subject !== 'x-home');
    const facts = { ...weekend, verdicts, asked: { ...weekend.asked, only: ['x-far'] } };
    expect(buildRecord(facts).untested).toContainEqual(
      expect.objectContaining({ subject: 'x-home', check: 'press', reason: 'left out of this session' }),
    );
  });
});

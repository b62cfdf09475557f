import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Finding, FindingKind } from '../../src/model/finding.ts';
import { findingKinds } from '../../src/model/finding.ts';
import { explainPage, findingsPage } from '../../src/words/explain.ts';
import { changesOf, findingWords, saidOf } from '../../src/words/findings/catalogue.ts';
import { workshop } from '../report/workshop.ts';
import { oneOfEach } from './one-of-each.ts';

const scene = (subject: string, ...together: FindingKind[]) => ({ machine: workshop, subject, together });
const open = (breaks: readonly string[] = []): Finding => ({
  kind: 'break-undetected',
  input: 'x-far',
  breaks,
});

describe('the words of findings', () => {
  it.each(findingKinds)(
    '%s is explained in a few sentences with a next step, and its case is told',
    (kind) => {
      const { title, means, next } = findingWords[kind];
      expect(title.length).toBeLessThan(60);
      expect(means.split(/\. /).length).toBeGreaterThanOrEqual(2);
      expect(means.split(/\. /).length).toBeLessThanOrEqual(5);
      expect(next.length).toBeGreaterThan(0);
      const said = saidOf(oneOfEach[kind], scene('x-far', kind));
      expect(said).toMatch(/\.$/);
      expect(said).not.toMatch(/undefined|\[object/);
      expect(explainPage(kind)).toContain(means);
    },
  );

  it('keeps the committed page of findings equal to the catalogue', () => {
    expect(readFileSync('docs/findings.md', 'utf8')).toBe(findingsPage());
  });

  it('cures a normally open switch by moving the wire to the normally closed blade, then the setting', () => {
    const changes = changesOf(open(), scene('x-far', 'break-undetected'));
    expect(changes.map(({ what, from, to }) => [what, from, to])).toEqual([
      ['wire', 'normally open blade', 'normally closed blade'],
      ['setting', 'x-far active when closed', 'x-far active when open'],
    ]);
  });

  it('leaves the setting alone where rewiring a reversed normally open switch already makes it right', () => {
    const together = ['break-undetected', 'polarity-reversed'] as const;
    const changes = [
      ...changesOf(open(), scene('x-far', ...together)),
      ...changesOf({ kind: 'polarity-reversed', input: 'x-far' }, scene('x-far', ...together)),
    ];
    expect(changes.map(({ what }) => what)).toEqual(['wire']);
  });

  it('names the inputs that a shared setting would turn wrong', () => {
    const [, setting] = changesOf(open(['x-home', 'y-limits']), {
      ...scene('x-far', 'break-undetected'),
      machine: { ...workshop, polarity: 'one for all' },
    });
    expect(setting?.why).toContain('x-home and y-limits');
    expect(setting?.retest).toContain('every input');
  });

  it('asks no one to rewire a touch plate, which is open by its nature', () => {
    expect(changesOf(open(), scene('plate', 'break-undetected'))).toEqual([]);
    expect(findingWords['break-undetected'].next.join(' ')).toMatch(/touch plate.*before every probing/i);
  });

  it('exchanges a sensor for one that conducts at rest, since it has no blades', () => {
    const [change] = changesOf(open(), scene('z-top', 'break-undetected'));
    expect(change?.to).toMatch(/output conducts at rest/);
  });

  it('turns the told setting of a reversed input round', () => {
    const [change] = changesOf({ kind: 'polarity-reversed', input: 'z-top' }, scene('z-top'));
    expect(change).toMatchObject({ from: 'z-top set to active when closed', to: 'active when open' });
  });

  it('leaves the stop circuit to licensed practice', () => {
    for (const kind of ['power-stays-on', 'restarts'] as const)
      expect(findingWords[kind].next.join(' ')).toMatch(/licensed practice/);
  });

  it('keeps the spelling of a name at the head of a sentence', () => {
    expect(saidOf({ kind: 'flickers', input: 'z-top' }, scene('z-top'))).toMatch(/found changing by itself/);
    expect(saidOf({ kind: 'flickers', input: 'z-top', edges: 3 }, scene('z-top'))).toMatch(
      /^With hands off, z-top/,
    );
    expect(saidOf({ kind: 'stuck-active', input: 'z-top' }, scene('z-top'))).toMatch(/^z-top reads active/);
  });
});

import { describe, expect, it } from 'vitest';
import { verdictLines } from '../../src/console/faces/lines-text.ts';
import { findingKinds } from '../../src/model/finding.ts';
import { everyCheck, evidenceLevels, statuses } from '../../src/model/verdict.ts';
import { findingWords } from '../../src/words/findings/catalogue.ts';
import { termsNamed } from '../../src/words/terms.ts';
import {
  checkWords,
  evidenceWords,
  noEvidence,
  statusWords,
  steadyWords,
  weightWords,
} from '../../src/words/verdict-words.ts';
import { faultWords } from '../../src/words/wiring/fault-words.ts';
import { machine, verdict } from './events.ts';
import { tellwire } from './run.ts';

const page = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await tellwire('explain', ...words);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return out;
};

describe('tellwire explain', () => {
  it('knows every word that stands in a verdict', () => {
    const printed = [
      ...findingKinds.flatMap((kind) => [kind, findingWords[kind].title]),
      ...statuses.map((each) => statusWords[each].word),
      ...Object.values(weightWords),
      ...Object.values(steadyWords),
      ...evidenceLevels.map((each) => evidenceWords[each].word),
      noEvidence.word,
      ...everyCheck.map((each) => checkWords[each].title),
      ...Object.values(faultWords).map(({ title }) => title),
    ];
    expect(printed.filter((each) => termsNamed(each).length === 0)).toEqual([]);
  });

  it('takes each part of a verdict line as it was printed', async () => {
    const [line = ''] = verdictLines(verdict, machine());
    const [, check = '', status = '', evidence = ''] =
      /^Verdict: (.*), x-home: (.*) \((.*)\)\.$/.exec(line) ?? [];
    expect(await page(check)).toContain(checkWords['open-wire'].question);
    expect(await page(status)).toMatch(/within a limitation/);
    expect(await page(evidence)).toContain('inside the time window');
  });

  it.each([
    [['A broken wire goes unnoticed']],
    [['A', 'broken', 'wire', 'goes', 'unnoticed']],
    [['Limitation: A broken wire goes unnoticed.']],
    [['break undetected']],
    [['BREAK-UNDETECTED']],
  ])('takes %j for break-undetected', async (words) =>
    expect(await page(...words)).toMatch(/^A broken wire goes unnoticed\n\(break-undetected,/),
  );

  it('takes a straight apostrophe for the one that is printed', async () =>
    expect(await page("The stop's status does not follow the button")).toContain('(status-not-following,'));

  it('shows all that one title stands for', async () => {
    const title = faultWords['signal-to-plus'].title;
    const out = await page(title);
    expect(out).toContain('(signal-to-plus, a possible cause)');
    expect(out).toContain('(fed-signal-to-plus, a possible cause)');
    expect(JSON.parse(await page(title, '--json'))).toHaveLength(2);
  });

  it('fits a terminal of 80 columns', async () => {
    for (const kind of ['break-undetected', 'heads-away', 'Signal core broken'])
      for (const line of (await page(kind)).split('\n')) expect(line.length).toBeLessThan(80);
  });

  it.each([
    ['brake-undetected', /Did you mean break-undetected\?/],
    ['head away', /Did you mean heads-away\?/],
    ['Open wires', /Did you mean open-wire/],
    ['backlashes', /Did you mean backlash\?/],
  ])('asks whether something near was meant by %s', async (typed, near) => {
    const { code, out, err } = await tellwire('explain', typed);
    expect({ code, out }).toEqual({ code: 3, out: '' });
    expect(err).toMatch(near);
  });
});

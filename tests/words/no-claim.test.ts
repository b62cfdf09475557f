import { describe, expect, it } from 'vitest';
import { findingKinds } from '../../src/model/finding.ts';
import { acceptance, retestTriggers, whatItIs } from '../../src/words/acceptance.ts';
import { answerWords } from '../../src/words/answer-words.ts';
import { askWords } from '../../src/words/ask-words.ts';
import { caution } from '../../src/words/cautions.ts';
import { explainPage } from '../../src/words/explain.ts';
import { changesOf, saidOf } from '../../src/words/findings/catalogue.ts';
import { missingWords } from '../../src/words/missing-words.ts';
import { headlineWords, sectionWords } from '../../src/words/record-words.ts';
import { checkWords, evidenceWords, statusWords } from '../../src/words/verdict-words.ts';
import { workshop } from '../report/workshop.ts';
import { actions, asked } from './asks.ts';
import { oneOfEach } from './one-of-each.ts';

const scene = { machine: workshop, subject: 'x-far', together: [] };
const everything = JSON.stringify([
  acceptance,
  retestTriggers,
  whatItIs,
  answerWords,
  caution,
  missingWords,
  headlineWords,
  sectionWords,
  checkWords,
  evidenceWords,
  statusWords,
  findingKinds.map((kind) => [
    explainPage(kind),
    saidOf(oneOfEach[kind], scene),
    changesOf(oneOfEach[kind], scene),
  ]),
  actions.map((action) => askWords(asked(action), workshop)),
]);

/** The only places where the word may stand: where it is denied. */
const denials = [
  'not a safety validation',
  'no safety function',
  'no assurance that the machine is safe to operate',
];

describe('what is never said', () => {
  it('never calls anything safe, except to deny it', () => {
    const rest = denials.reduce((text, denial) => text.replaceAll(denial, ''), everything);
    for (const denial of denials) expect(everything).toContain(denial);
    expect(rest.match(/.{0,40}safe.{0,40}/i)?.[0]).toBeUndefined();
  });

  it('gives no verdict the sound of a permission', () => {
    expect(everything).not.toMatch(/\b(OK|all good|passed|ready to (run|use)|cleared for|good to go)\b/i);
  });

  it('says of a broken wire that it goes unnoticed', () => {
    expect(everything).toContain('goes unnoticed');
    expect(everything).not.toMatch(/\bsilent(ly)?\b/i);
  });

  it('keeps the signal words of ISO 3864 and ANSI Z535 out of findings and verdicts', () => {
    const judged = JSON.stringify([findingKinds.map(explainPage), statusWords, headlineWords, checkWords]);
    expect(judged).not.toMatch(/\b(danger|warning|caution)\b/i);
  });
});

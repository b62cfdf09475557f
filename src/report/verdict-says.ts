import type { Verdict } from '../model/verdict.ts';
import { causeSentences, possibleText } from '../words/cause/cause-words.ts';
import { missingWords } from '../words/missing-words.ts';
import { motionSays } from '../words/motion/motion-says.ts';
import {
  powerWords,
  pressStatement,
  resolutionStatement,
  restStatement,
  rowStatement,
  soakStatement,
} from '../words/statements.ts';

/** What a verdict's facts say, as sentences; findings speak for themselves. */
export function saysOf({ facts, missing }: Verdict): readonly string[] {
  return [
    ...missing.map((each) => `Missing: ${missingWords[each]}.`),
    ...(facts.rest ? [restStatement(facts.rest)] : []),
    ...(facts.presses && facts.presses.asked > 0 && missing.length === 0
      ? [pressStatement(facts.presses)]
      : []),
    ...(facts.soak ? [soakStatement(facts.soak)] : []),
    ...(facts.cause ? causeSentences(facts.cause) : []),
    ...(facts.row ? [`${sentence(rowStatement(facts.row))}.`] : []),
    ...(facts.possible ? [possibleText(facts.possible)] : []),
    ...(facts.contactFound ? [`Found: ${facts.contactFound}.`] : []),
    ...(facts.unpluggedAt === 'controller'
      ? ['Unplugged at the controller: weaker, the cable was not part of it.']
      : []),
    ...(facts.answeredBy ? [`Answered on ${facts.answeredBy}.`] : []),
    ...(facts.controllerActed ? ['The controller halted on it: it acts on this input.'] : []),
    ...(facts.powerShownBy
      ? [`What showed that drive power went: ${powerWords[facts.powerShownBy]} (told).`]
      : []),
    ...motionSays(facts),
    ...(facts.resolution ? [resolutionStatement(facts.resolution)] : []),
  ];
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

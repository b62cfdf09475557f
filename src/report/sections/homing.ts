import type { Facts } from '../../model/verdict.ts';
import { homingFields, homingSentences } from '../../words/motion/homing-words.ts';
import { lengthText } from '../../words/motion/lengths.ts';
import { repeatFields, repeatSays, sourceWords } from '../../words/motion/repeat-words.ts';
import { stoppingFields, stoppingText } from '../../words/motion/stopping-words.ts';
import { type Block, strong, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** Homing part by part. */
export const homingBlocks = (record: ReportRecord): readonly Block[] =>
  byAxis(record, 'homing', homingSentences.none, (facts) => [
    { kind: 'fields', fields: homingFields(facts) },
  ]);

/** How well each axis comes back to its switch. */
export const repeatBlocks = (record: ReportRecord): readonly Block[] =>
  byAxis(record, 'repeat', homingSentences.repeatNone, (facts) => [
    strong(repeatSays[facts.says](lengthText(facts.tolerance, facts.unit))),
    { kind: 'pictures', pictures: [{ of: 'repeat', facts }] },
    { kind: 'fields', fields: repeatFields(facts) },
    text(sourceWords[facts.source]),
  ]);

/** Whether each axis comes to rest before its switch or the machine is harmed. */
export const stoppingBlocks = (record: ReportRecord): readonly Block[] =>
  byAxis(record, 'stopping', homingSentences.stoppingNone, (facts) => [
    strong(stoppingText(facts)),
    { kind: 'fields', fields: stoppingFields(facts) },
  ]);

/** A group for each axis that has such facts; where none has, what was not tested. */
function byAxis<Key extends 'homing' | 'repeat' | 'stopping'>(
  { verdicts }: ReportRecord,
  key: Key,
  none: string,
  blocks: (facts: NonNullable<Facts[Key]>) => readonly Block[],
): readonly Block[] {
  const found = factsIn(verdicts, key);
  if (found.length === 0) return [text(none)];
  return found.map((facts) => ({ kind: 'group', heading: `${facts.axis} axis`, blocks: blocks(facts) }));
}

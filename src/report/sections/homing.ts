import { homingFields, homingSentences } from '../../words/motion/homing-words.ts';
import { lengthText } from '../../words/motion/lengths.ts';
import { repeatFields, repeatSays, sourceWords } from '../../words/motion/repeat-words.ts';
import { stoppingFields, stoppingSays } from '../../words/motion/stopping-words.ts';
import { type Block, strong, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** Homing part by part, how well it repeats, and whether an axis stops in time. */
export function homingBlocks({ verdicts }: ReportRecord): readonly Block[] {
  const homings = factsIn(verdicts, 'homing');
  const repeats = factsIn(verdicts, 'repeat');
  const stops = factsIn(verdicts, 'stopping');
  return [
    ...(homings.length === 0 ? [text(homingSentences.none)] : []),
    ...homings.map(
      (facts): Block => ({
        kind: 'group',
        heading: `${facts.axis}: homing`,
        blocks: [{ kind: 'fields', fields: homingFields(facts) }],
      }),
    ),
    ...(repeats.length === 0 ? [text(homingSentences.repeatNone)] : []),
    ...repeats.map(
      (facts): Block => ({
        kind: 'group',
        heading: `${facts.axis}: repeatability`,
        blocks: [
          strong(repeatSays[facts.says](lengthText(facts.tolerance, facts.unit))),
          { kind: 'pictures', pictures: [{ of: 'repeat', facts }] },
          { kind: 'fields', fields: repeatFields(facts) },
          text(sourceWords[facts.source]),
        ],
      }),
    ),
    ...(stops.length === 0 ? [text(homingSentences.stoppingNone)] : []),
    ...stops.map(
      (facts): Block => ({
        kind: 'group',
        heading: `${facts.axis}: stopping distance`,
        blocks: [strong(stoppingSays[facts.says]), { kind: 'fields', fields: stoppingFields(facts) }],
      }),
    ),
  ];
}

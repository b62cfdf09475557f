import { frameEvidence, frameWords, wayWords } from '../../words/motion/frame-words.ts';
import { sketchWords } from '../../words/motion/sketch-words.ts';
import { type Block, strong, text } from '../document.ts';
import { planOf } from '../drawings/sketch/plan.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** The machine from above, and the frame its axes span in plain words. */
export function sketchBlocks({ machine, verdicts }: ReportRecord): readonly Block[] {
  const frame = factsIn(verdicts, 'frame').at(-1);
  const sketch = { axes: machine.axes, ways: frame?.ways ?? [] };
  const watched = (frame?.ways.length ?? 0) > 0;
  if (planOf(sketch).arrows.length === 0 && !watched) return [text(sketchWords.nothing), { kind: 'space' }];
  return [
    ...(watched ? [] : [text(sketchWords.notWatched)]),
    ...(frame === undefined
      ? []
      : [frame.says === 'true' ? text(frameWords.true) : strong(frameWords[frame.says])]),
    text(sketchWords.key),
    { kind: 'pictures', pictures: [{ of: 'sketch', sketch }] },
    ...(frame === undefined || !watched
      ? []
      : [
          {
            kind: 'table' as const,
            label: 'True ways of the axes',
            columns: [
              { head: 'Positive command of', width: 24 },
              { head: 'takes the tool over the work', width: 32 },
              { head: 'What stands behind it' },
            ],
            rows: frame.ways.map((way) => [way.commanded, wayWords(way), frameEvidence[way.evidence]]),
          },
        ]),
  ];
}

import { scaleFields, scaleRow, scaleSays, scaleSentences } from '../../words/motion/scale-words.ts';
import { type Block, strong, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** Commanded against measured lengths, backlash apart. */
export function scaleBlocks({ verdicts }: ReportRecord): readonly Block[] {
  const scales = factsIn(verdicts, 'scale');
  if (scales.length === 0) return [text(scaleSentences.none)];
  return scales.map((facts) => ({
    kind: 'group',
    heading: `${facts.axis} axis`,
    blocks: [
      strong(scaleSays[facts.says]),
      { kind: 'fields', fields: scaleFields(facts) },
      {
        kind: 'table',
        label: `Lengths of ${facts.axis}`,
        columns: [
          { head: 'Commanded' },
          { head: 'Measured' },
          { head: 'Difference' },
          { head: 'Way' },
          { head: 'After a reversal' },
        ],
        rows: facts.runs.map((run) => scaleRow(run, facts.unit)),
      },
    ],
  }));
}

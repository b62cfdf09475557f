import type { EnvelopeFacts, ProgramFacts } from '../../model/envelope-facts.ts';
import { counted } from '../../words/figures.ts';
import { doubtWords, endItems, endWords, envelopeSentences } from '../../words/motion/envelope-words.ts';
import { lengthText } from '../../words/motion/lengths.ts';
import { type Block, type Field, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { factsIn } from './axis-facts.ts';

/** What bounds each axis, drawn to scale and told item by item; then the program that was laid into it. */
export function envelopeBlocks({ verdicts }: ReportRecord): readonly Block[] {
  const envelopes = factsIn(verdicts, 'envelope');
  if (envelopes.length === 0) return [text(envelopeSentences.none)];
  return [
    text(envelopeSentences.key),
    ...envelopes.map(envelopeGroup),
    ...factsIn(verdicts, 'program').map(programGroup),
  ];
}

function envelopeGroup(facts: EnvelopeFacts): Block {
  const { axis, unit, softMargin, roomNeeded, usable, backOff, origins, parts } = facts;
  const ends = (['negative', 'positive'] as const).map(
    (end): Field => [
      sentence(endWords[end]),
      endItems(facts, end)
        .map(([label, value]) => `${label.toLowerCase()} ${value}`)
        .join('; '),
    ],
  );
  const length = (label: string, value: number | undefined): readonly Field[] =>
    value === undefined ? [] : [[label, lengthText(value, unit)]];
  return {
    kind: 'group',
    heading: `${axis} axis`,
    blocks: [
      { kind: 'pictures', pictures: [{ of: 'envelope', facts }] },
      {
        kind: 'fields',
        fields: [
          ...ends,
          ...length('Back-off', backOff),
          ...length('A soft limit must lie inside its switch by', softMargin),
          ...length('A stop from rapid takes', roomNeeded),
          ...length('Left to work in', usable),
          ...origins.map(
            ({ system, at, active, shift }): Field => [
              `Zero of ${system}${active ? ', active' : ''}`,
              `${lengthText(at, unit)}${shift === undefined || shift === 0 ? '' : `, of which ${lengthText(shift, unit)} a temporary shift (G92)`}`,
            ],
          ),
          ...parts.map(
            ({ system, low, high, lowLine, highLine }): Field => [
              `Program in ${system}`,
              `${lengthText(low, unit)} (line ${lowLine}) to ${lengthText(high, unit)} (line ${highLine})`,
            ],
          ),
        ],
      },
    ],
  };
}

const sentence = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1);

/** More than these are counted, not listed. */
const listedLines = 40;

function programGroup(program: ProgramFacts): Block {
  const { lines, motions, notUnderstood } = program;
  const remarks = [
    program.unitsAssumed ? 'It never says which unit it counts in: millimetres were assumed.' : '',
    program.usesToolLength ? 'It uses a tool length: Z depends on the tool that is in.' : '',
    program.shiftsTemporarily ? 'It shifts its coordinates itself (G92).' : '',
    notUnderstood.length === 0 ? 'Every line was understood.' : '',
    notUnderstood.length > listedLines
      ? `${notUnderstood.length - listedLines} more lines are left out here.`
      : '',
  ].filter((remark) => remark !== '');
  return {
    kind: 'group',
    heading: 'The program',
    blocks: [
      text(`${counted(lines, 'line')}, ${counted(motions, 'motion')}. ${remarks.join(' ')}`),
      ...(notUnderstood.length === 0
        ? []
        : [
            {
              kind: 'table' as const,
              label: 'Lines not understood, or only in part',
              columns: [{ head: 'Line', width: 10 }, { head: 'As it stands', width: 45 }, { head: 'Why' }],
              rows: notUnderstood
                .slice(0, listedLines)
                .map(({ line, text: words, why }) => [`${line}`, words, doubtWords[why]]),
            },
          ]),
    ],
  };
}

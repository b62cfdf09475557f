import { evidenceLevels } from '../../model/verdict.ts';
import { whatItIs } from '../../words/acceptance.ts';
import { counted, listed, momentText, timeText } from '../../words/figures.ts';
import { blankWords } from '../../words/record-words.ts';
import { checkWords, evidenceWords, noEvidence } from '../../words/verdict-words.ts';
import { type Block, list, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';

const polarityWords = {
  each: 'one for each input',
  'one for all': 'a single one for all inputs',
  unknown: blankWords.notStated,
} as const;

export function identityBlocks({ machine, session, tool }: ReportRecord): readonly Block[] {
  const axes = machine.axes.map(({ letter, kind, motors, travel }) =>
    [
      `${letter} (${kind}`,
      motors > 1 ? counted(motors, 'motor') : '',
      travel === undefined ? '' : `travel ${travel} mm`,
    ]
      .filter((part) => part !== '')
      .join(', ')
      .concat(')'),
  );
  return [
    {
      kind: 'fields',
      fields: [
        ['Machine', machine.name],
        ['Axes', axes.length === 0 ? blankWords.notStated : listed(axes)],
        ['Left and right as seen', machine.stand ?? blankWords.notStated],
        ['Active-level setting', polarityWords[machine.polarity]],
        ['Maker, serial number', undefined],
        ['Controller and its version', undefined],
        ['Report number, previous report', undefined],
        ['Machine file, SHA-256', session.machineHash],
        ['Written by', `tellwire ${tool.version}, rules ${tool.rules}`],
      ],
    },
  ];
}

export function peopleBlocks({ session, stream }: ReportRecord): readonly Block[] {
  return [
    {
      kind: 'fields',
      fields: [
        ['Started', momentText(session.started)],
        ['Port', session.port],
        [
          'Stream',
          stream.median === undefined
            ? 'no reports'
            : `a report every ${timeText(stream.median)}, longest hole ${stream.longest === undefined ? 'unknown' : timeText(stream.longest)}`,
        ],
        ['Tested by', undefined],
        ['Witness', undefined],
        ['Ended', undefined],
        ['Temperature; dry or wet', undefined],
        ['Spindle, coolant, drives: on or off', undefined],
      ],
    },
  ];
}

export function methodBlocks({ session }: ReportRecord): readonly Block[] {
  const { checks, presses, rest, only } = session.asked;
  const asked = checks.map((check) => `${checkWords[check].title}: ${checkWords[check].question}`);
  return [
    text(whatItIs.listens),
    text(whatItIs.method),
    text(whatItIs.silence),
    text(
      `Asked for: ${counted(presses, 'press', 'presses')} of each switch, ${rest} s hands off${only === undefined ? '' : `, only ${listed(only)}`}.`,
    ),
    list(asked),
    {
      kind: 'table',
      label: 'What stands behind a statement, weakest first',
      columns: [{ head: 'Evidence', width: 25 }, { head: 'What stands behind it' }],
      rows: [noEvidence, ...evidenceLevels.map((level) => evidenceWords[level])].map(({ word, means }) => [
        word,
        means,
      ]),
    },
    text(whatItIs.colours),
  ];
}

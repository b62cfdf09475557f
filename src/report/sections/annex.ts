import type { UnreadableWhy } from '../../model/reading.ts';
import type { Millis } from '../../model/units.ts';
import { askedForTitle } from '../../words/asked-for.ts';
import { counted, timeText } from '../../words/figures.ts';
import { whoseWords } from '../../words/own-line-words.ts';
import { blankWords } from '../../words/record-words.ts';
import { endedWords, unreadableWords } from '../../words/stream-words.ts';
import { type Block, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';

const moment = (at: Millis): string => (at / 1000).toFixed(3);

export const annexBlocks = (record: ReportRecord): readonly Block[] => [
  { kind: 'group', heading: 'The recording', blocks: [recording(record)] },
  { kind: 'group', heading: 'Written to the port through this tool', blocks: sentBlocks(record) },
  { kind: 'group', heading: 'Asked and answered, word for word', blocks: dialogueBlocks(record) },
];

function recording({ session, stream }: ReportRecord): Block {
  const unread = Object.entries(stream.unreadable) as [UnreadableWhy, number][];
  const time = (value: Millis | undefined) => (value === undefined ? 'not observed' : timeText(value));
  return {
    kind: 'fields',
    fields: [
      ['Capture, SHA-256', session.captureHash],
      ['Lines; status reports', `${stream.lines}; ${stream.reports}`],
      ['Between two reports', `usually ${time(stream.median)}, longest ${time(stream.longest)}`],
      ['Interruptions; lost reports', `${stream.gaps}; ${stream.lost}`],
      ['Controller restarts', `${stream.restarts}`],
      [
        'Unreadable lines',
        unread.length === 0
          ? 'none'
          : unread.map(([why, count]) => `${unreadableWords[why]}: ${count}`).join('; '),
      ],
      ['Inputs in the stream', stream.inputs.join(', ') || 'none'],
      ['Axes in the stream', stream.axes.join(', ') || 'none'],
    ],
  };
}

function sentBlocks({ sent }: ReportRecord): readonly Block[] {
  if (sent.length === 0) return [text('Nothing. Not one byte.')];
  return [
    text(`${counted(sent.length, 'line')}. Nothing else was written.`),
    {
      kind: 'table',
      label: 'Written to the port',
      columns: [
        { head: 's', width: 12 },
        { head: 'Whose', width: 22 },
        { head: 'Bytes, control bytes escaped' },
      ],
      rows: sent.map((each) => [moment(each.at), whoseWords[each.own ? 'own' : 'tool'], each.text]),
    },
  ];
}

/** Cautions come again and again: each is printed once with a number, and each ask names the numbers shown with it. */
function dialogueBlocks({ dialogue }: ReportRecord): readonly Block[] {
  if (dialogue.length === 0) return [text(blankWords.none)];
  const cautions = [...new Set(dialogue.flatMap((ask) => ask.cautions))];
  return [
    {
      kind: 'table',
      label: 'Asked and answered',
      columns: [
        { head: 'No.', width: 5 },
        { head: 's', width: 8 },
        { head: 'Check', width: 10 },
        { head: 'Shown' },
        { head: 'Cautions', width: 10 },
        { head: 'Ended by', width: 12 },
        { head: 'Answer', width: 8 },
      ],
      rows: dialogue.map((ask) => [
        ask.again === undefined ? `${ask.id}` : [`${ask.id}`, `again ${ask.again}`],
        moment(ask.from),
        ask.check === 'resume' ? 'Resume' : askedForTitle(ask.check),
        ask.text,
        ask.cautions.map((each) => `${cautions.indexOf(each) + 1}`).join(', '),
        ask.by === undefined ? 'not ended' : endedWords[ask.by],
        ask.answer ?? '',
      ]),
    },
    text('Cautions, by the numbers above:'),
    { kind: 'list', items: cautions, ordered: true },
  ];
}

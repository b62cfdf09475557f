import { acceptance } from '../../words/acceptance.ts';
import { blankWords } from '../../words/record-words.ts';
import { type Block, list, markOf, strong, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { placeText } from '../subjects.ts';

export const explainedBlocks = ({ explained }: ReportRecord): readonly Block[] =>
  explained.length === 0
    ? [text(blankWords.none)]
    : explained.map(({ title, means, next }) => ({
        kind: 'group',
        heading: title,
        blocks: [text(means), { kind: 'list', items: next, ordered: true }],
      }));

/** Status and function in columns of their own: a button that is seen may still stop nothing. */
export function functionBlocks(record: ReportRecord): readonly Block[] {
  const rows = record.inputMap.filter(({ declared }) =>
    declared.duty.some((duty) => duty === 'stop' || duty === 'door' || duty === 'probe'),
  );
  if (rows.length === 0) return [text(`${blankWords.notTested}. The machine file declares none of them.`)];
  const on = (subject: string, check: 'press' | 'stop') =>
    record.verdicts.find((each) => each.check === check && each.subject === subject);
  return [
    {
      kind: 'table',
      label: 'Status and function',
      columns: [
        { head: 'Input', width: 28 },
        { head: 'Duty', width: 12 },
        { head: 'Status follows', width: 20 },
        { head: 'Function', width: 20 },
        { head: 'How it was seen' },
      ],
      rows: rows.map((row) => {
        const status = on(row.subject, 'press');
        const works = on(row.subject, 'stop');
        return [
          placeText(row) === '' ? row.subject : [row.subject, placeText(row)],
          row.declared.duty.join(', '),
          markOf(status ?? { check: 'press', status: 'not-tested' }),
          markOf(works ?? { check: 'stop', status: 'not-tested' }),
          works?.says ?? [],
        ];
      }),
    },
  ];
}

/** What nothing here covers; the list is never empty and no format may leave it out. */
export const untestedBlocks = ({ untested }: ReportRecord): readonly Block[] => [
  {
    kind: 'table',
    label: 'Not tested',
    columns: [{ head: 'Not tested', width: 32 }, { head: 'Reason', width: 28 }, { head: 'What that means' }],
    rows: untested.map(({ what, reason, consequence }) => [what, reason, consequence]),
  },
];

export const changeBlocks = ({ changes }: ReportRecord): readonly Block[] =>
  changes.length === 0
    ? [text(blankWords.none)]
    : [
        {
          kind: 'table',
          label: 'Changes to make',
          columns: [
            { head: 'No.', width: 5 },
            { head: 'Where', width: 10 },
            { head: 'What', width: 8 },
            { head: 'From', width: 16 },
            { head: 'To', width: 16 },
            { head: 'Why' },
            { head: 'Then test again', width: 14 },
            { head: 'Made, by', width: 13 },
          ],
          rows: changes.map(({ subject, what, from, to, why, retest }, i) => [
            `${i + 1}`,
            subject,
            what,
            from,
            to,
            why,
            retest,
            '',
          ]),
        },
      ];

export const openBlocks = ({ stillOut }: ReportRecord): readonly Block[] =>
  stillOut.length === 0
    ? [text('Empty: nothing is known to be unplugged.')]
    : stillOut.map(({ subject, at }) => strong(`Still out: plug of ${subject} at the ${at}.`));

export const retestBlocks = ({ retest }: ReportRecord): readonly Block[] => [
  list(retest),
  { kind: 'fields', fields: [['Next test due', undefined]] },
];

export const acceptanceBlocks = (): readonly Block[] => [
  ...acceptance.map(text),
  {
    kind: 'fields',
    fields: [
      ['Tested by, date, signature', undefined],
      ['Witness, date, signature', undefined],
      ['Accepted by, date, signature', undefined],
    ],
  },
];

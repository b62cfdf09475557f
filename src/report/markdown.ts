import { visible } from '../model/visible.ts';
import { traceText } from '../words/trace-words.ts';
import { schematicText } from '../words/wiring/schematic-words.ts';
import { stateWords } from '../words/wiring/study-words.ts';
import { type Block, type Cell, isMark, type Picture, type Section, type Table } from './document.ts';
import { pictureText } from './drawings/picture.tsx';
import { plain } from './markdown-text.ts';
import type { ReportRecord } from './record.ts';
import { sectionsOf } from './sections/all.ts';
import { titleOf, whenOf } from './title.ts';

/** The record as Markdown (CommonMark with GFM tables). Drawings are told in words. */
export function markdown(record: ReportRecord): string {
  const body = sectionsOf(record).flatMap(sectionLines);
  return [`# ${plain(titleOf(record))}`, '', `${plain(whenOf(record))}.`, '', ...body].join('\n');
}

export const sectionLines = ({ heading, stress, blocks }: Section): readonly string[] => [
  `## ${stress === 'own-page' ? `**${plain(heading)}**` : plain(heading)}`,
  '',
  ...blocks.flatMap((block) => blockLines(block, stress !== undefined)),
];

function blockLines(block: Block, loud: boolean): readonly string[] {
  switch (block.kind) {
    case 'text':
      return [block.strong || loud ? `**${plain(block.text)}**` : plain(block.text), ''];
    case 'list':
      return [...block.items.map((item, i) => `${block.ordered ? `${i + 1}.` : '-'} ${plain(item)}`), ''];
    case 'commands':
      return ['```', ...block.lines.map(visible), '```', ''];
    case 'table':
      return tableLines(block);
    case 'fields':
      return [
        ...block.fields.map(
          ([label, value]) => `- ${plain(label)}: ${value === undefined ? blank : plain(value)}`,
        ),
        '',
      ];
    case 'headline':
      return [`**${plain(cellText(block.mark))}.** ${plain(block.text)}`, ''];
    case 'callout':
      return [`> **${plain(block.label)}: ${plain(block.title)}.** ${plain(block.text)}`, ''];
    case 'drawings':
      return [
        ...block.drawings.map(({ title, trace }) => `- ${plain(title)}. ${plain(traceText(trace))}`),
        '',
      ];
    case 'schematics':
      return [
        ...block.schematics.map(
          ({ wiring, state }) => `- ${plain(`${stateWords[state.state]}: ${schematicText(wiring, state)}`)}`,
        ),
        '',
      ];
    case 'pictures':
      return [...block.pictures.flatMap(pictureLines), ''];
    case 'space':
      return [];
    case 'group':
      return [`### ${plain(block.heading)}`, '', ...block.blocks.flatMap((each) => blockLines(each, false))];
  }
}

function pictureLines(picture: Picture): readonly string[] {
  const told = pictureText(picture);
  return told === undefined ? [] : [`- ${plain(told)}`];
}

const blank = '\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_';

const cellText = (cell: Cell): string =>
  isMark(cell) ? `${cell.mark} ${cell.word}`.trim() : typeof cell === 'string' ? cell : cell.join(' ');

function tableLines({ columns, rows }: Table): readonly string[] {
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const heads = columns.map(({ head, group }) => plain(group === undefined ? head : `${group}: ${head}`));
  const cell = (each: Cell) =>
    typeof each === 'string' || isMark(each) ? plain(cellText(each)) : each.map(plain).join('<br>');
  return [row(heads), row(columns.map(() => '---')), ...rows.map((cells) => row(cells.map(cell))), ''];
}

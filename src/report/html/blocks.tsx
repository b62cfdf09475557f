import type { ComponentChildren } from 'preact';
import { motionSentences } from '../../words/motion/track-words.ts';
import { type Block, type Cell, isMark, type Table } from '../document.ts';
import { PictureView } from '../drawings/picture.tsx';
import { Schematic } from '../drawings/schematic/schematic.tsx';
import { Waveform } from '../drawings/waveform.tsx';
import { MarkView } from './shapes.tsx';

/** Each kind of block as HTML. The renderer escapes every text. */
export function BlockView({ block, id }: { readonly block: Block; readonly id: string }) {
  switch (block.kind) {
    case 'text':
      return <p class={block.strong ? 'strong' : ''}>{block.text}</p>;
    case 'list':
      return <ListView items={block.items} ordered={block.ordered ?? false} />;
    case 'commands':
      return <pre>{block.lines.join('\n')}</pre>;
    case 'table':
      return <TableView table={block} />;
    case 'fields':
      return (
        <dl>
          {block.fields.map(([label, value]) => (
            <div key={label}>
              <dt>{label}</dt>
              {value === undefined ? <dd class="blank" /> : <dd>{value}</dd>}
            </div>
          ))}
        </dl>
      );
    case 'headline':
      return (
        <div class={`headline ${block.mark.tone}`}>
          <MarkView mark={block.mark} />
          <p>{block.text}</p>
        </div>
      );
    case 'callout':
      return (
        <div class={`callout ${block.tone}`}>
          <b>
            {block.label}: {block.title}.
          </b>{' '}
          {block.text}
        </div>
      );
    case 'drawings':
      return (
        <div class="drawings">
          {block.drawings.map((drawing, i) => (
            <figure key={`${id}-${i}`}>
              <figcaption>{drawing.title}</figcaption>
              <Waveform drawing={drawing} id={`${id}-${i}`} />
            </figure>
          ))}
        </div>
      );
    case 'schematics':
      return (
        <div class="schematics">
          {block.schematics.map(({ title, wiring, state }, i) => (
            <figure key={`${id}-${i}`}>
              <figcaption>{title}</figcaption>
              <Schematic wiring={wiring} state={state} id={`${id}-${i}`} />
            </figure>
          ))}
        </div>
      );
    case 'pictures':
      return (
        <div class="pictures">
          {block.pictures.map((picture, i) => (
            <figure key={`${id}-${i}`}>
              {picture.of === 'close-up' ? <figcaption>{motionSentences.closeUp}</figcaption> : null}
              <PictureView picture={picture} id={`${id}-${i}`} />
            </figure>
          ))}
        </div>
      );
    case 'space':
      return <div class="space" />;
    case 'group':
      return (
        <section class="group">
          <div class="keep">
            <h3>{block.heading}</h3>
            <Blocks blocks={block.blocks.slice(0, 1)} id={id} />
          </div>
          <Blocks blocks={block.blocks.slice(1)} id={`${id}-more`} />
        </section>
      );
  }
}

export function Blocks({ blocks, id }: { readonly blocks: readonly Block[]; readonly id: string }) {
  return (
    <>
      {blocks.map((block, i) => (
        <BlockView key={`${id}-${i}`} block={block} id={`${id}-${i}`} />
      ))}
    </>
  );
}

function ListView({ items, ordered }: { readonly items: readonly string[]; readonly ordered: boolean }) {
  const inside = items.map((item) => <li key={item}>{item}</li>);
  return ordered ? <ol>{inside}</ol> : <ul>{inside}</ul>;
}

function TableView({ table }: { readonly table: Table }) {
  const { columns, rows, label } = table;
  const grouped = columns.some(({ group }) => group !== undefined);
  return (
    <table aria-label={label} class={`columns-${columns.length}`}>
      <colgroup>
        {columns.map(({ head, group, width }) => (
          <col key={`${group}${head}`} {...(width === undefined ? {} : { style: `width:${width}%` })} />
        ))}
      </colgroup>
      <thead>
        {grouped ? (
          <tr class="groups">
            {groupsOf(table).map(({ group, span }) => (
              <th key={group} colSpan={span} scope="colgroup">
                {group}
              </th>
            ))}
          </tr>
        ) : null}
        <tr>
          {columns.map(({ head, group }) => (
            <th key={`${group}${head}`} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((cells, at) => (
          <tr key={`row-${at}`}>
            {cells.map((cell, i) => (
              <td key={`${at}-${i}`}>
                <CellView cell={cell} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function groupsOf({ columns }: Table): readonly { readonly group: string; readonly span: number }[] {
  const groups: { group: string; span: number }[] = [];
  for (const { group = '' } of columns) {
    const last = groups.at(-1);
    if (last?.group === group) last.span++;
    else groups.push({ group, span: 1 });
  }
  return groups;
}

function CellView({ cell }: { readonly cell: Cell }): ComponentChildren {
  if (isMark(cell)) return <MarkView mark={cell} />;
  if (typeof cell === 'string') return cell;
  return cell.map((line, i) => <div key={`line-${i}`}>{line}</div>);
}

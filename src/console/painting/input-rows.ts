import { counted } from '../../words/figures.ts';
import { cellsOf, fitted } from './cells.ts';
import { edgeStrip } from './edge-strip.ts';
import { isOn, type LiveInput, type LiveInputs } from './live-inputs.ts';
import { type Canvas, type Row, textOf } from './row.ts';

/** Live inputs, one a row: which one is asked for, its name, a shape, a word, and the strip of its last edges. */
export function inputRows(
  live: LiveInputs,
  asked: string | undefined,
  rows: number,
  canvas: Canvas,
): readonly Row[] {
  const all = live.all;
  if (rows <= 0 || all.length === 0) return [];
  if (all.length <= rows) return all.map((each) => inputRow(each, asked, live, all, canvas));
  const only = rows === 1 ? all.filter(({ name }) => name === asked) : [];
  if (only[0]) return [oneRow(only[0], all, live, canvas)];
  const shown = pick(all, asked, rows - 1);
  const rest = all.filter((each) => !shown.includes(each));
  return [
    ...shown.map((each) => inputRow(each, asked, live, all, canvas)),
    restRow(rest, shown.length, canvas),
  ];
}

/** Where there is one row for them all: the one asked for, and what the others are. */
function oneRow(asked: LiveInput, all: readonly LiveInput[], live: LiveInputs, canvas: Canvas): Row {
  const own = inputRow(asked, asked.name, live, [asked], canvas).slice(0, 2);
  const left = canvas.width - cellsOf(textOf(own));
  const others = all.filter((each) => each !== asked);
  return [...own, ...restRow(others, 1, { ...canvas, width: Math.max(0, left) })];
}

/** Those without a row of their own in one: whichever of them is on has its name told, as many as fit. */
function restRow(rest: readonly LiveInput[], shown: number, { width }: Canvas): Row {
  const head = `   ${counted(rest.length, shown === 0 ? 'input' : 'more input')}`;
  const on = rest.filter((each) => isOn(each));
  if (on.length === 0) {
    const known = rest.every((each) => isOn(each) !== undefined) ? '' : 'known to be ';
    return [{ text: fitted(`${head}, none of them ${known}active`, width), tone: 'faint' }];
  }
  const named = (count: number, before: string): string => {
    const names = on.slice(0, count).map((each) => `${each.name} ${wordOf(each)}`);
    return `${before}${[...names, ...(count < on.length ? [`${counted(on.length - count, 'other')} on`] : [])].join(', ')}`;
  };
  const most = (before: string): number =>
    on.findLastIndex((_, i) => cellsOf(named(i + 1, before)) <= width) + 1;
  const before = most(`${head}: `) > 0 ? `${head}: ` : '  ';
  return [{ text: fitted(named(most(before), before), width), tone: 'strong' }];
}

/** The one asked for, then those that changed last; shown in the order the stream declares them. */
function pick(all: readonly LiveInput[], asked: string | undefined, most: number): readonly LiveInput[] {
  const lastChange = (each: LiveInput): number => each.changes.at(-1)?.at ?? 0;
  const chosen = all
    .toSorted((a, b) => Number(b.name === asked) - Number(a.name === asked) || lastChange(b) - lastChange(a))
    .slice(0, most);
  return all.filter((each) => chosen.includes(each));
}

function inputRow(
  input: LiveInput,
  asked: string | undefined,
  live: LiveInputs,
  all: readonly LiveInput[],
  { width, glyphs }: Canvas,
): Row {
  const on = isOn(input);
  const nameWide = Math.min(24, Math.max(...all.map(({ name }) => name.length)));
  const mark = input.name === asked ? glyphs.asked : ' ';
  const shape = on === undefined ? glyphs.unknown : on ? glyphs.active : glyphs.quiet;
  const head = ` ${mark} ${fitted(input.name, nameWide)}  `;
  const word = `${shape} ${fitted(wordOf(input), 8)} `;
  const left = width - head.length - word.length - 1;
  return [
    { text: head, tone: input.name === asked ? 'strong' : 'plain' },
    { text: word, tone: on ? 'strong' : 'plain' },
    { text: left > 4 ? edgeStrip(input, live.now, left, glyphs) : '', tone: 'faint' },
  ];
}

function wordOf({ level, active }: LiveInput): string {
  if (active !== '?') return active === '1' ? 'ACTIVE' : 'inactive';
  return level === 'H' ? 'HIGH' : level === 'L' ? 'low' : 'unknown';
}

import { seconds } from '../../model/units.ts';
import { askedForTitle } from '../../words/asked-for.ts';
import { secondsText } from '../../words/figures.ts';
import { ownLineWords } from '../../words/own-line-words.ts';
import { answerKeys } from '../faces/answer-keys.ts';
import { ownLineKey } from '../faces/own-line-prompt.ts';
import { cellsOf, fitted, wrapped } from './cells.ts';
import { type Canvas, type Row, row, textOf } from './row.ts';
import type { AskOnScreen, ScreenState } from './screen-state.ts';

/** What the tool is and is not, and how far the work has come. */
export function topRow({ ask, verdicts }: ScreenState, { width }: Canvas): Row {
  const check =
    ask === undefined || ask.shown.ask.check === 'resume' ? '' : askedForTitle(ask.shown.ask.check);
  const place = [check, ask && `ask ${ask.shown.id}`, `${verdicts} judged`].filter(Boolean);
  const whole = place.join(', ');
  const pairs = [
    [listensOnly, whole],
    ...[whole, place.slice(0, -1).join(', '), check].map((part) => [cannotStop, part] as const),
  ] as const;
  const fits = pairs.find((pair) => cellsOf(pair.join('  ')) < width);
  const [left, right] = fits ?? [cannotStop, ''];
  return [
    { text: fitted(left, Math.max(0, width - cellsOf(right) - 1)), tone: 'faint' },
    { text: `${right} `, tone: 'faint' },
  ];
}

/** What the tool cannot do goes before how far the work has come. */
const cannotStop = ' tellwire cannot stop the machine';
const listensOnly = ' tellwire listens only and cannot stop the machine';

/** A window lower than this has two rows for each notice while something is asked. */
const lowWindow = 30;

/** What is still unplugged, and what is the matter with the stream: each stays until it is over. */
export function noticeRows(
  { notice, out, ask }: ScreenState,
  { width, height, glyphs }: Canvas,
): readonly Row[] {
  return [out, notice].flatMap((text) => {
    const all = text === undefined ? [] : wrapped(text, width - 5);
    const kept = height < lowWindow && ask !== undefined ? all.slice(0, 2) : all;
    return kept.map((line, i) => {
      const cut = i === kept.length - 1 && kept.length < all.length ? '…' : '';
      return row(` ${i === 0 ? glyphs.other : ' '} ${line}${cut}`, 'caution');
    });
  });
}

/** How long an echo stands out. */
const fresh = 2500;

/** What happened last, with a shape for each kind, and how much of the time for it is left. */
export function echoRow({ echo, ask }: ScreenState, { width, glyphs, now }: Canvas): Row {
  const right = ask ? timeLeft(ask, now, glyphs.active, glyphs.quiet) : '';
  if (!echo) return row(fitted('', width - cellsOf(right)) + right, 'faint');
  const shape = { seen: glyphs.seen, other: glyphs.other, said: ' ' }[echo.kind];
  const room = Math.max(0, width - cellsOf(right) - 1);
  const said = fitted(` ${shape} ${echo.text}`, Math.min(room, cellsOf(` ${shape} ${echo.text} `)));
  const isFresh = echo.kind !== 'said' && now - echo.at < fresh;
  return [
    { text: said, tone: isFresh ? 'marked' : 'plain' },
    { text: fitted('', room - cellsOf(said)), tone: 'plain' },
    { text: ` ${right}`, tone: 'faint' },
  ];
}

const timed = ['hands-off', 'press', 'release', 'clear'];
const squares = 10;

/** "12 s ■■■■■■□□□□", counting down; empty for asks that wait as long as the person needs. */
function timeLeft({ shown, since }: AskOnScreen, now: number, full: string, hollow: string): string {
  if (!timed.includes(shown.ask.action)) return '';
  const left = Math.max(0, shown.ask.seconds - (now - since) / 1000);
  const filled = Math.ceil((left / shown.ask.seconds) * squares);
  return `${secondsText(seconds(Math.ceil(left)))} ${full.repeat(filled)}${hollow.repeat(squares - filled)} `;
}

/** The answers of the open ask, each with its key. */
export function answerRows({ ask }: ScreenState, { width }: Canvas): readonly Row[] {
  if (!ask) return [row('')];
  const parts: Row[] = [
    ...ask.shown.answers.map((each): Row => part(answerKeys[each], each)),
    ...(ask.shown.ownLine ? [part(ownLineKey, ownLineWords.key)] : []),
    part('?', 'what they mean'),
  ];
  const rows: Row[] = [];
  for (const next of parts) {
    const last = rows.at(-1);
    if (last && cellsOf(textOf([...last, ...next])) <= width) rows[rows.length - 1] = [...last, ...next];
    else rows.push(next);
  }
  return rows;
}

const part = (key: string, word: string): Row => [
  { text: ' ', tone: 'plain' },
  { text: ` ${key} `, tone: 'marked' },
  { text: ` ${word} `, tone: 'plain' },
];

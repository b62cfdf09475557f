import type { Field } from '../../../model/stream-description.ts';
import { type Piece, piecesOf } from './atoms.ts';
import { FieldList } from './field-list.ts';
import { jsonFields } from './json-fields.ts';

/** Longest line that is taken apart, in bytes. */
export const longestLine = 8192;
const deepest = 8;
const longestKey = 40;
const longestName = 120;

export interface TakenApart {
  readonly fields: readonly Field[];
  /** Values in the line, each counted once whatever names it goes by. */
  readonly count: number;
}

/**
 * Takes any line apart by its form alone. What stands before a colon or an equals sign, or right before a bracket, is a name; what
 * has none is counted: `in.1` is the second value of `in`, `0` the first bare column, `g0.1` the second value of the first bracket.
 * Work and memory are bounded by the length of the line.
 */
export function takeApart(line: string): TakenApart {
  const text = line.slice(0, longestLine);
  const list = jsonFields(text) ?? linked(piecesOf(text));
  return { fields: list.all(), count: list.count };
}

/** Brackets in each other, names and the counting below them. */
interface Level {
  readonly prefix: string;
  /** Values without a name. */
  columns: number;
  brackets: number;
  key: string | undefined;
  values: number;
}

function linked(pieces: readonly Piece[]): FieldList {
  const list = new FieldList();
  const levels: Level[] = [levelAt('')];
  let beyond = 0;
  let before: Piece['kind'] | undefined;
  let adjacent: Piece['kind'] | undefined;
  const here = () => levels[levels.length - 1] ?? levelAt('');

  const value = (text: string) => {
    const level = here();
    if (level.key === undefined) list.value(`${level.prefix}${level.columns++}`, text);
    else {
      const number = level.values++;
      list.value(number === 0 ? level.key : `${level.key}.${number}`, text);
      list.addToSet(level.key, text);
    }
    if (level.key === undefined && level.prefix !== '') list.addToSet(level.prefix.slice(0, -1), text);
  };
  const name = (text: string) => {
    const level = here();
    const joined = adjacent === 'key' && level.key !== undefined && level.values === 0;
    level.key = (joined ? `${level.key}.${text}` : `${level.prefix}${text}`).slice(0, longestName);
    level.values = 0;
    list.set(level.key);
  };
  const open = () => {
    const level = here();
    if (levels.length >= deepest) {
      beyond++;
      return;
    }
    const own = level.values === 0 ? level.key : undefined;
    const prefix = own ?? `${level.prefix}g${level.brackets++}`;
    if (own === undefined) list.set(prefix);
    level.key = undefined;
    levels.push(levelAt(`${prefix}.`));
  };
  const close = () => {
    if (beyond > 0) beyond--;
    else if (levels.length > 1) levels.pop();
    here().key = undefined;
  };

  for (const [i, piece] of pieces.entries()) {
    if (list.isFull) break;
    if (piece.kind === 'atom') {
      if (isName(piece, pieces, i)) name(piece.text.slice(0, longestKey));
      else value(piece.text);
    } else if (piece.kind === 'open') open();
    else if (piece.kind === 'close') close();
    else if (piece.kind === 'bar') here().key = undefined;
    if ((piece.kind === 'comma' || piece.kind === 'bar') && before === piece.kind) skipColumn(here());
    if (piece.kind !== 'space') before = piece.kind;
    adjacent = piece.kind;
  }
  return list;
}

const levelAt = (prefix: string): Level => ({ prefix, columns: 0, brackets: 0, key: undefined, values: 0 });

/** Nothing between two separators is a column that holds nothing. */
function skipColumn(level: Level): void {
  if (level.key === undefined) level.columns++;
  else level.values++;
}

function isName(piece: Extract<Piece, { kind: 'atom' }>, pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1]?.kind;
  const behind = next === 'space' ? pieces[at + 2]?.kind : next;
  const named = piece.quoted || /^(?:[a-z_][\w.#-]*|\d{1,2})$/i.test(piece.text);
  return named && (behind === 'key' || (next === 'open' && /[a-z]/i.test(piece.text)));
}

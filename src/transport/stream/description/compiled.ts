import type { Active, Activity, Level } from '../../../model/reading.ts';
import {
  type ActivityBinding,
  absent,
  type Field,
  type InputBinding,
  type LinesMeant,
  mayBeMissing,
  numberIn,
  partOf,
  type Spot,
  type StreamDescription,
} from '../../../model/stream-description.ts';
import { type Mm, mm } from '../../../model/units.ts';
import type { TakenApart } from '../shapes/fields.ts';
import { mayBeAmong, StrangeWords } from './damaged-word.ts';
import { lineTest } from './line-test.ts';

export interface InputState {
  readonly level: Level;
  readonly active: Active;
}

/** What one line said, by the index of the input or axis; what it said nothing of is not in it. */
export interface LineSays {
  readonly inputs: ReadonlyMap<number, InputState>;
  readonly axes: ReadonlyMap<number, Mm | undefined>;
  readonly activity: Activity | undefined;
}

const unknown: InputState = { level: '?', active: '?' };

/** Compiles a description: from a line taken apart to what it says; undefined where it is none of those described, `wrong` where it is and says nothing that can be. */
export function compiled(
  description: StreamDescription,
): (line: TakenApart) => LineSays | 'wrong' | undefined {
  const { inputs, axes, activity, agree } = description;
  const strangeWords = new StrangeWords(wordsOf(description));
  const kinds = kindsOf(
    [...inputs, ...axes].map(({ at }) => at.lines).concat(activity ? [activity.lines] : []),
  );

  return ({ fields, count }) => {
    const texts = textsOf(fields);
    const line = { texts, count, begins: fields[0]?.path };
    const meant = new Set<string>();
    for (const { key, isMeant } of kinds) if (isMeant(line)) meant.add(key);
    if (meant.size === 0) return undefined;
    let right = 0;
    const textAt = (at: { field: string; lines: LinesMeant }) =>
      meant.has(keyOf(at.lines)) ? texts.get(at.field) : undefined;
    const strange = new Map<string, readonly string[]>();
    const strangeIn = (field: string, set: string) => {
      const found = strange.get(field) ?? strangeWords.in(set);
      strange.set(field, found);
      return found;
    };
    const shown = (at: Spot) => {
      if (!meant.has(keyOf(at.lines))) return undefined;
      const text = texts.get(at.field) ?? (mayBeMissing(at.part) ? '' : undefined);
      if (text === undefined) return undefined;
      const symbol = partOf(text, at.part);
      if (agree === 1 || at.part.kind !== 'word' || symbol !== absent) return { symbol };
      return { symbol: mayBeAmong(strangeIn(at.field, text), at.part.word) ? undefined : symbol };
    };
    const said = new Map<number, InputState>();
    for (const [index, { at }] of inputs.entries()) {
      const found = shown(at);
      if (!found) continue;
      const state = stateOf(at, found.symbol);
      if (state !== unknown) right++;
      said.set(index, state);
    }
    const positions = new Map<number, Mm | undefined>();
    for (const [index, { at }] of axes.entries()) {
      const text = textAt(at);
      if (text === undefined) continue;
      const value = numberIn(text);
      if (value !== undefined) right++;
      positions.set(index, value === undefined ? undefined : mm(value * at.scale));
    }
    const doing = activity && shown(activity);
    const does = activity && doing ? activityOf(activity, doing.symbol) : undefined;
    if (does !== undefined && does !== '?') right++;
    if (right === 0) return said.size + positions.size > 0 || doing ? 'wrong' : undefined;
    return { inputs: said, axes: positions, activity: does };
  };
}

/** Of two values under one name the first is meant: the one that learning looks at too. */
function textsOf(fields: readonly Field[]): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const { path, text } of fields) if (!texts.has(path)) texts.set(path, text);
  return texts;
}

const wordsOf = ({ inputs, activity }: StreamDescription): ReadonlySet<string> =>
  new Set(
    [...inputs.map(({ at }) => at.part), ...(activity ? [activity.part] : [])].flatMap((part) =>
      part.kind === 'word' ? [part.word] : [],
    ),
  );

const keyOf = (lines: LinesMeant): string => keys.get(lines) ?? remember(lines);
const keys = new WeakMap<LinesMeant, string>();

function remember(lines: LinesMeant): string {
  const values = lines.values && Object.entries(lines.values).sort(([a], [b]) => (a < b ? -1 : 1));
  const key = JSON.stringify([lines.count, lines.begins, lines.has, values]);
  keys.set(lines, key);
  return key;
}

const kindsOf = (all: readonly LinesMeant[]) =>
  [...new Map(all.map((lines) => [keyOf(lines), lines]))].map(([key, lines]) => ({
    key,
    isMeant: lineTest(lines),
  }));

/** A level of no known voltage: H stands for what is listed as active, which fits most circuits and decides nothing. */
function stateOf({ shows, active, inactive }: InputBinding, symbol: string | undefined): InputState {
  const isOn = symbol !== undefined && active.includes(symbol);
  if (!isOn && (symbol === undefined || !inactive.includes(symbol))) return unknown;
  return shows === 'active'
    ? { level: '?', active: isOn ? '1' : '0' }
    : { level: isOn ? 'H' : 'L', active: '?' };
}

function activityOf({ still, moving, homing, fault }: ActivityBinding, symbol: string | undefined): Activity {
  if (symbol === undefined) return '?';
  if (still.includes(symbol)) return 'still';
  if (moving.includes(symbol)) return 'moving';
  if (homing.includes(symbol)) return 'homing';
  return fault.includes(symbol) ? 'fault' : '?';
}

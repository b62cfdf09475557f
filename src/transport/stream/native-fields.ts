import type { Active, Activity, Level } from '../../model/reading.ts';
import { count, decimal, maxClock, maxSequence, millivolts } from './native-numbers.ts';
import type { Sentence, Unreadable } from './sentence.ts';

/** Reads the fields after the address of one kind of sentence. */
type FieldReader = (fields: readonly string[]) => Sentence | Unreadable;

export const maxInputs = 64;
/** ISO 841 letters a native declaration may use. */
const axisLetters = /^[XYZABCUVW]{0,9}$/;

const wrongCount: Unreadable = { kind: 'unreadable', why: 'wrong-field-count' };
const wrongNumber: Unreadable = { kind: 'unreadable', why: 'wrong-number' };

function declaration(fields: readonly string[]): Sentence | Unreadable {
  const [version, units, letters, list] = fields;
  if (fields.length !== 4 || letters === undefined || list === undefined) return wrongCount;
  // Another version may mean other fields: nothing of it is understood.
  if (version !== '1') return { kind: 'unreadable', why: 'unknown-sentence' };
  const axes = [...letters];
  const names = nameList(list);
  if (units !== 'mm' && units !== 'inch') return wrongNumber;
  if (!axisLetters.test(letters) || !distinct(axes) || names === undefined) return wrongNumber;
  return { kind: 'declaration', units, axes, names };
}

function moreNames(fields: readonly string[]): Sentence | Unreadable {
  const [index, list] = fields;
  if (fields.length !== 2 || index === undefined || list === undefined) return wrongCount;
  const first = count(index, maxInputs - 1);
  const names = nameList(list);
  if (first === undefined || names === undefined || names.length === 0) return wrongNumber;
  return first + names.length <= maxInputs ? { kind: 'more-names', first, names } : wrongNumber;
}

function status(fields: readonly string[]): Sentence | Unreadable {
  const [seqText, msText, activityText, levelText, activeText, ...rest] = fields;
  if (seqText === undefined || msText === undefined || activityText === undefined) return wrongCount;
  if (levelText === undefined || activeText === undefined || rest.length > 9) return wrongCount;
  const seq = count(seqText, maxSequence);
  const ms = count(msText, maxClock);
  const activity = activities.get(activityText);
  const positions = optional(rest, decimal);
  if (seq === undefined || ms === undefined || activity === undefined || positions === undefined)
    return wrongNumber;
  if (!/^[HL?]{0,64}$/.test(levelText) || !/^[10?]{0,64}$/.test(activeText)) return wrongNumber;
  // Each is one character an input, so two unequal lists cannot both be whole.
  if (levelText !== '' && activeText !== '' && levelText.length !== activeText.length) return wrongCount;
  const levels = [...levelText] as Level[];
  const active = [...activeText] as Active[];
  return { kind: 'status', seq, ms, activity, levels, active, positions };
}

function edge(fields: readonly string[]): Sentence | Unreadable {
  const [seqText, usText, indexText, level] = fields;
  if (fields.length !== 4 || seqText === undefined || usText === undefined || indexText === undefined)
    return wrongCount;
  const seq = count(seqText, maxSequence);
  const us = count(usText, maxClock);
  const input = count(indexText, maxInputs - 1);
  if (seq === undefined || us === undefined || input === undefined) return wrongNumber;
  return level === 'H' || level === 'L' ? { kind: 'edge', seq, us, input, level } : wrongNumber;
}

function voltages(fields: readonly string[]): Sentence | Unreadable {
  const [msText, ...rest] = fields;
  if (msText === undefined || rest.length > maxInputs) return wrongCount;
  const ms = count(msText, maxClock);
  const values = optional(rest, millivolts);
  return ms === undefined || values === undefined ? wrongNumber : { kind: 'volts', ms, millivolts: values };
}

export const fieldReaders: ReadonlyMap<string, FieldReader> = new Map([
  ['PTWRD', declaration],
  ['PTWRN', moreNames],
  ['PTWRS', status],
  ['PTWRE', edge],
  ['PTWRA', voltages],
]);

const activities: ReadonlyMap<string, Activity> = new Map([
  ['still', 'still'],
  ['moving', 'moving'],
  ['homing', 'homing'],
  ['fault', 'fault'],
  ['', '?'],
]);

/** Names between single spaces; an empty field holds none. Undefined where a name is not one, or stands twice. */
function nameList(text: string): readonly string[] | undefined {
  if (text === '') return [];
  const names = text.split(' ');
  const sound = names.length <= maxInputs && names.every((name) => /^[a-z0-9-]{1,24}$/.test(name));
  return sound && distinct(names) ? names : undefined;
}

/** Fields of which each may be empty; undefined where one is neither empty nor a number. */
function optional(
  fields: readonly string[],
  read: (text: string) => number | undefined,
): readonly (number | undefined)[] | undefined {
  const values: (number | undefined)[] = [];
  for (const field of fields) {
    const value = field === '' ? undefined : read(field);
    if (field !== '' && value === undefined) return undefined;
    values.push(value);
  }
  return values;
}

const distinct = (items: readonly string[]) => new Set(items).size === items.length;

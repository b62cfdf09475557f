import type { Machine } from '../model/machine.ts';
import { allSwitches } from '../model/machine.ts';
import { namesToTry } from '../model/nearest.ts';
import { ToolError } from '../model/tool-error.ts';
import type { CheckName } from '../model/verdict.ts';
import { visible } from '../model/visible.ts';
import { listed } from '../words/figures.ts';

const wrong = (option: string, found: string, allowed: string): ToolError =>
  new ToolError('wrong-usage', `--${option} ${visible(found)}: not understood.`, allowed);

/** The port, which has to be named. */
export function portOption(port: string | undefined): string {
  if (port !== undefined) return port;
  throw new ToolError('wrong-usage', 'No port was named.', 'Add --port; `tellwire ports` lists them.');
}

/** A whole number within bounds, both included. */
export function countOption(option: string, text: string, least: number, most: number): number {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw wrong(option, text, `Write a whole number from ${least} to ${most}.`);
}

/** "10s", "10 s", "2min", "90": seconds. */
export function timeOption(option: string, text: string, least: number, most: number): number {
  const [, figure, unit = 's'] = /^(\d{1,6}(?:\.\d{1,3})?) ?(ms|s|min|h)?$/.exec(text.trim()) ?? [];
  const value =
    figure === undefined ? Number.NaN : Number(figure) * { ms: 0.001, s: 1, min: 60, h: 3600 }[unit as 's'];
  if (value >= least && value <= most) return value;
  throw wrong(option, text, `Write a time from ${least} s to ${most} s, such as 10s or 2min.`);
}

/** Names between commas, given once or several times. */
export const namesIn = (given: readonly string[]): readonly string[] => [
  ...new Set(
    given
      .flatMap((each) => each.split(','))
      .map((each) => each.trim())
      .filter((each) => each !== ''),
  ),
];

/** The checks asked for, in the order of the house; `all`, or none at all, are all that a guided session has. */
export function checksOption(given: readonly string[], has: readonly CheckName[]): readonly CheckName[] {
  const names = namesIn(given);
  if (given.length === 0 || names.includes('all')) return has;
  for (const name of names) {
    if (has.some((each) => each === name)) continue;
    if (name !== 'soak') throw wrong('checks', name, namesToTry(name, has, `There are ${listed(has)}.`));
    const found = 'The check soak is no part of a guided session: it counts false trips with nobody near.';
    throw new ToolError('wrong-usage', found, 'Run watch with --soak, such as --soak 8h.');
  }
  if (names.length === 0) throw wrong('checks', given.join(','), `There are ${listed(has)}.`);
  return has.filter((each) => names.includes(each));
}

/** The subjects asked for: an input's name stands for all its switches. Undefined: all. */
export function onlyOption(given: readonly string[], machine: Machine): readonly string[] | undefined {
  if (given.length === 0) return undefined;
  const switches = allSwitches(machine);
  const chosen = namesIn(given).flatMap((name) => {
    const found = switches.filter((each) => each.subject === name || each.input === name);
    if (found.length > 0) return found.map(({ subject }) => subject);
    throw wrong('only', name, switchesToTry(name, machine));
  });
  if (chosen.length === 0) throw wrong('only', given.join(','), 'Name inputs of the machine file.');
  return switches.map(({ subject }) => subject).filter((each) => chosen.includes(each));
}

/** In place of a switch or an input that the machine file does not name. */
export function switchesToTry(name: string, machine: Machine): string {
  const subjects = allSwitches(machine).map(({ subject }) => subject);
  const inputs = machine.inputs.map((each) => each.name);
  return namesToTry(
    name,
    [...new Set([...subjects, ...inputs])],
    `The machine file names ${listed(subjects)}.`,
  );
}

export const faceNames = ['screen', 'lines', 'json'] as const;
export type FaceName = (typeof faceNames)[number];

/** Which face: as asked for, else the screen where both ends are a terminal, else lines. */
export function faceOption(given: string | undefined, isTerminal: boolean): FaceName {
  if (given === undefined) return isTerminal ? 'screen' : 'lines';
  const found = faceNames.find((each) => each === given);
  if (!found) throw wrong('operator', given, `Write ${listed(faceNames, 'or')}.`);
  if (found === 'screen' && !isTerminal) {
    throw new ToolError(
      'wrong-usage',
      'The screen needs a terminal on its input and output.',
      'Use --operator lines, or json for a program.',
    );
  }
  return found;
}

/** Repeatable options gather what was given. */
export const gather = (value: string, before: readonly string[] = []): readonly string[] => [
  ...before,
  value,
];

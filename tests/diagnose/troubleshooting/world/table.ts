import { readFileSync } from 'node:fs';
import { deedsFor } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import { looksOf } from './doings.ts';
import { type Answer, lookedAt, type Question, questionOf } from './looks.ts';
import { type Machine, machineOf } from './machine.ts';
import type { Solver } from './solvers.ts';

/** Where ngspice is missing its answers for a few machines are read from a table that it wrote; write-table.mjs writes it anew. */
export const tableFile = new URL('./volts.txt', import.meta.url);

const circuits = [
  'normally-open-to-ground',
  'normally-closed-to-ground',
  'contact-into-fed-optocoupler',
  'npn-into-pull-up',
  'hall-module',
  'touch-plate',
];

/** The machines of the table: the first of all, of a few wirings. */
export function tableMachines(count = 60): readonly Machine[] {
  const found: Machine[] = [];
  for (let seed = 1; found.length < count; seed++) {
    const machine = machineOf(seed);
    if (circuits.includes(machine.wiring.circuit.name)) found.push(machine);
  }
  return found;
}

/** Every question that can come up about a machine, whatever is done in whatever order. */
export const everyQuestion = (machine: Machine): readonly Question[] =>
  deedsFor(machine.wiring).flatMap(({ name }) =>
    looksOf(name, machine.wiring).flatMap((look) =>
      [false, true].map((isAgain) => questionOf(machine, lookedAt(name, look, isAgain))),
    ),
  );

/** A network and what is asked of it, in one word (two FNV-1a sums of 32 bits). */
export function wordFor({ volts, pins, machine }: Question, network: Question['networks'][number]): string {
  const text = `${machine.seed} ${volts.join()} ${pins.join()} ${JSON.stringify(network)}`;
  let [one, other] = [0x811c9dc5, 0x01000193];
  for (let i = 0; i < text.length; i++) {
    one = Math.imul(one ^ text.charCodeAt(i), 0x01000193);
    other = Math.imul(other ^ text.charCodeAt(i), 0x85ebca6b) + i;
  }
  return [one, other].map((each) => (each >>> 0).toString(36)).join('');
}

export function tableText(questions: readonly Question[], answers: readonly Answer[]): string {
  const rows = new Map<string, string>();
  for (const [at, question] of questions.entries())
    for (const [number, network] of question.networks.entries())
      rows.set(
        wordFor(question, network),
        (answers[at]?.[number] ?? []).map((each) => Number(each.toPrecision(6))).join(' '),
      );
  return `${[...rows].map(([word, numbers]) => `${word} ${numbers}`).join('\n')}\n`;
}

export function byTable(text = readFileSync(tableFile, 'utf8')): Solver {
  const rows = new Map(
    text
      .trimEnd()
      .split('\n')
      .map((line) => {
        const [word = '', ...numbers] = line.split(' ');
        return [word, numbers.map(Number)] as const;
      }),
  );
  return (questions) =>
    questions.map((question) =>
      question.networks.map((network) => {
        const found = rows.get(wordFor(question, network));
        if (!found)
          throw new Error(
            'A network is not in the table: node scripts/measure-faults/write-table.mjs writes it anew.',
          );
        return found;
      }),
    );
}

import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CheckName, Verdict } from '../../src/model/verdict.ts';
import { remove, virtualSession } from '../session/virtual-session.ts';
import { type CircuitMachine, otherInput, ownInput } from './circuit-machines.ts';

/** The file a person would write for it who knows what she bought, and nothing of what went wrong. */
export function machineFile({ wiring: { contact }, bench }: CircuitMachine): string {
  const entries = (bench.truth?.inputs ?? []).map(({ name }) =>
    [
      `  ${name}:`,
      '    duty: [home]',
      `    axis: ${name === otherInput ? 'Y' : 'X'}`,
      '    end: negative',
      '    place: at the bench',
      `    contact: ${contact}`,
      '    voltage: 24 V',
    ].join('\n'),
  );
  return [
    'machine: One circuit',
    'units: mm',
    'polarity: each',
    'inputs:',
    ...entries,
    'axes:',
    '  X: { travel: 300, homes: negative }',
    '  Y: { travel: 300, homes: negative }',
    '',
  ].join('\n');
}

/** Thousands of small files that are synced one by one: a file system in memory takes them where there is one. */
const inMemory = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();

/** The whole session, from opening the port to the written report, with a person who does what she is asked. */
export async function commissioned(
  machine: CircuitMachine,
  checks: readonly CheckName[],
): Promise<readonly Verdict[]> {
  const folder = mkdtempSync(join(inMemory, 'circuit-'));
  try {
    const { facts } = await virtualSession({
      folder,
      bench: machine.bench,
      session: { machineText: machineFile(machine), checks, restSeconds: 2 },
    });
    return facts.verdicts;
  } finally {
    remove(folder);
  }
}

/** Every verdict on the input says proved. */
export function endsProved(verdicts: readonly Verdict[]): boolean {
  const own = verdicts.filter(({ subject }) => subject === ownInput);
  return own.length > 0 && own.every(({ status }) => status === 'proved');
}

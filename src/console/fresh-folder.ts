import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Machine } from '../model/machine.ts';

/** A folder under `sessions` that is not there yet, named by the moment (UTC, ISO 8601 basic) and the machine. */
export function freshFolder(startedUtc: string, machine: Machine, below = 'sessions'): string {
  const moment = startedUtc.replace(/\.\d+/, '').replaceAll(/[-:]/g, '');
  const name = machine.name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 40);
  const first = join(below, [moment, name].filter(Boolean).join('-'));
  for (let i = 1; ; i++) {
    const folder = i === 1 ? first : `${first}-${i}`;
    if (!existsSync(folder)) return folder;
  }
}

import { readFileSync } from 'node:fs';

/** The version as package.json has it; read, not imported, so that asking for it loads nothing else. */
export function toolVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

import { basename, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The commands by name, as `program.ts` has them; a test compares the two. */
const commands = [
  'commission',
  'troubleshoot',
  'map',
  'wiring',
  'watch',
  'inline',
  'replay',
  'compare',
  'report',
  'learn',
  'bench',
  'check',
  'explain',
  'ports',
] as const;

const ownFile = fileURLToPath(new URL('../../bin/tellwire.js', import.meta.url));

/**
 * What a person types to start this program once more: `tellwire` where she did, `npx tellwire` out of a folder’s own packages,
 * else node with the file, as seen from the folder she stands in.
 */
export function startedAs(script: string | undefined, folder: string): string {
  const name = basename(script ?? '');
  const file = name === 'tellwire.js' ? script : name === 'demo.js' ? ownFile : undefined;
  if (file === undefined)
    return /[\\/]node_modules[\\/]\.bin[\\/]tellwire$/.test(script ?? '') ? 'npx tellwire' : 'tellwire';
  const near = relative(folder, file);
  const shown = near.length < file.length ? near : file;
  return `node ${/^[\w.:/\\-]+$/.test(shown) ? shown : `"${shown}"`}`;
}

const command = new RegExp(`\\btellwire (?=(?:${commands.join('|')}|--help)\\b|<command>)`, 'g');

/**
 * A text for a person at this terminal, its commands as they can be typed here. Documents are read elsewhere and keep `tellwire`;
 * so does what a program reads.
 */
export const asTyped = (text: string, start = startedAs(process.argv[1], process.cwd())): string =>
  text.replace(command, () => `${start} `);

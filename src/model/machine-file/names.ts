import type { Parts } from './parts.ts';
import { cutShort, quoted, type Wrong } from './problem.ts';
import { axisLetters } from './shape.ts';

const mostInputs = 64;
const allowedName = 'lower-case letters, digits and hyphens, 24 at most';
/** Subjects of verdicts that are no input. */
const taken: ReadonlyMap<string, string> = new Map([
  ['stream', 'the status stream'],
  ['axes', 'the axes together'],
]);

const asName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 24) || 'input-1';

/** Names and counts: of inputs, of switches, of axes. A name stands for one thing only, whoever asks for it. */
export function sayWrongNames(parts: Parts, say: (wrong: Wrong) => void): void {
  const inputs = new Set(parts.inputs.map((input) => input.name));
  for (const [index, input] of parts.inputs.entries()) {
    sayWrongName(input, say);
    if (index === mostInputs)
      say({
        path: input.path,
        offset: input.at,
        found: `${parts.inputs.length} inputs`,
        allowed: `${mostInputs} at most`,
        tryNext: 'keep to the inputs the controller reports',
      });
    if (input.kind === 'single') continue;
    for (const each of input.switches) {
      sayWrongName(each, say);
      if (inputs.has(each.name))
        say({
          path: each.path,
          offset: each.at,
          found: `${quoted(each.name)} is also an input`,
          allowed: 'a name no input has',
          tryNext: 'rename the switch',
        });
    }
  }
  for (const axis of parts.axes)
    if (!axisLetters.some((letter) => letter === axis.name))
      say({
        path: axis.path,
        offset: axis.at,
        found: quoted(axis.name),
        allowed: axisLetters.join(', '),
        tryNext: nearLetter(axis.name),
      });
}

function nearLetter(name: string): string {
  const letter = axisLetters.find((each) => each === name.trim().slice(0, 1).toUpperCase());
  return letter === undefined ? 'use a letter of ISO 841' : `write ${letter}`;
}

function sayWrongName(
  part: { name: string; path: Wrong['path']; at: number },
  say: (wrong: Wrong) => void,
): void {
  const kept = taken.get(part.name);
  if (kept !== undefined)
    say({
      path: part.path,
      offset: part.at,
      found: quoted(part.name),
      allowed: `${allowedName}; this word is kept for ${kept}`,
      tryNext: 'use another name',
    });
  else if (!/^[a-z0-9-]{1,24}$/.test(part.name))
    say({
      path: part.path,
      offset: part.at,
      found: quoted(part.name),
      allowed: allowedName,
      tryNext: `write ${cutShort(asName(part.name))}`,
    });
}

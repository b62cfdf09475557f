import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { remove, temporaryFolder, type VirtualOutcome, virtualSession } from '../session/virtual-session.ts';
import { everyFace, everyFormat, everyMap } from './every-way-out.ts';

const markup = '<img src=x onerror=1>';
/** As YAML spells it: an image tag, a colour change; where there is room a window title, a turned writing direction, a link. */
const short = `"${markup} \\e[31mred"`;
const long = `"${markup} \\e[31mred\\e]0;title\\a \\u202Etxet [l](javascript:alert(1)) &lt;"`;
const file = scenarioFile
  .replace(/^(\s*(?:place|machine|stand)): .*$/gm, `$1: ${long}`)
  .replace(/(\{ place): [^}]*\}/g, `$1: ${long} }`)
  .replace(/^(\s*(?:terminal|connector)): .*$/gm, `$1: ${short}`);

/** C0 but line feed and form feed (which parts the pages of the screen), delete, C1, marks that turn or hide. */
const control =
  /[\u0000-\u0009\u000b\u000d-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff]/;

describe('a machine file with hostile text in it', () => {
  const folder = temporaryFolder();
  let outcome: VirtualOutcome;
  let ways: ReadonlyMap<string, string>;

  beforeAll(async () => {
    outcome = await virtualSession({
      folder,
      bench: { faults: ['normally-open:x-far', 'crossed:y-home,z-home', 'broken-wire:y-far'] },
      session: { machineText: file, presses: 1, restSeconds: 2 },
    });
    ways = new Map([...everyFormat(outcome.facts), ...everyMap(outcome.facts), ...everyFace(outcome)]);
  }, 60_000);
  afterAll(() => remove(folder));

  it('is taken as it is: these are words of a person', () => {
    expect(file.split(markup).length).toBeGreaterThan(20);
    expect(outcome.facts.machine.name).toContain('\u001b[31mred');
    expect(outcome.facts.verdicts.length).toBeGreaterThan(20);
  });

  const names = [
    ...['report md', 'report html', 'report json', 'report csv', 'summary'],
    ...['map md', 'map html', 'map csv', 'map json', 'map'],
    ...['json', 'lines', 'screen'],
  ];
  it('goes out in all these ways', () => expect([...ways.keys()].toSorted()).toEqual(names.toSorted()));

  it.each(names)('reaches no control byte into %s', (name) => {
    const text = (ways.get(name) ?? '').replaceAll('\r\n', '\n');
    expect(text.length).toBeGreaterThan(100);
    expect(control.exec(text)?.[0] ?? '').toBe('');
  });

  it.each(names)('stands as text in %s', (name) => {
    const text = ways.get(name) ?? '';
    expect(text).toMatch(/img src=x onerror=1/);
    // The escape is to be seen, written out, and not to act.
    expect(text).toMatch(/\\x1b|\\u001b|\\\\x1b/);
  });

  it.each(['report html', 'map html'])('becomes no element and no link in %s', (name) => {
    const text = ways.get(name) ?? '';
    expect(text).not.toMatch(/<img|<script|href=.?javascript/i);
    expect(text).toContain('&lt;img src=x onerror=1>');
  });

  it.each(['report md', 'map md'])('becomes no markup and no link in %s', (name) => {
    const text = ways.get(name) ?? '';
    expect(text).not.toContain(markup);
    expect(text).not.toMatch(/(?<!\\)\]\(/);
  });

  it('reaches no control byte into any file of the session', () => {
    const written = readdirSync(folder);
    expect(written.length).toBeGreaterThanOrEqual(7);
    for (const name of written)
      expect(control.exec(readFileSync(join(folder, name), 'utf8'))?.[0] ?? '', name).toBe('');
  });
});

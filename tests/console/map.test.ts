import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { mapIn, mapOf } from '../../src/console/run-map.ts';
import { SessionFolder } from '../../src/session/folder.ts';
import { virtualSession } from '../session/virtual-session.ts';

const below = mkdtempSync(join(tmpdir(), 'tellwire-map-'));
const file = (name: string, text: string): string => {
  const path = join(below, name);
  writeFileSync(path, text);
  return path;
};
const own = file('own.yaml', scenarioFile);
const changed = file('changed.yaml', `${scenarioFile}# a line more\n`);
const mill = file(
  'mill.yaml',
  'machine: Small mill\naxes: { X: { travel: 300 } }\ninputs: { x-home: { duty: [home] } }\n',
);

const shown = (machineFile?: string): string => mapIn(undefined, mapOf(undefined, machineFile, below));
const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ');

beforeAll(async () => {
  await virtualSession({
    folder: join(below, 'router'),
    session: { checks: ['press'], only: ['x-home', 'x-far'] },
  });
}, 60_000);
afterAll(() => rmSync(below, { recursive: true, force: true }));

describe('the input map', () => {
  it('names the session it was found in', () => {
    for (const text of [shown(), shown(own)])
      expect(oneLine(text)).toContain(
        `Found in the commissioning of 2026-01-02 03:04 UTC in ${join(below, 'router')}.`,
      );
  });

  it('says of each switch that nobody tested that it was not tested, and names them in its head', () => {
    const text = shown(own);
    const [, found = ''] =
      /^y-home .*\n(?: {2}declared.*\n(?: {12}.*\n)*) {2}found {5}(.*)/m.exec(text) ?? [];
    expect(found).toBe('not tested');
    expect(text).toMatch(/^ {2}found {5}answers on x-home;/m);
    expect(oneLine(text)).toMatch(/Not tested in it: y-home, y-far, .* and doors\/hatch\./);
  });

  it('says that the file was changed since, rather than that nothing was found', () => {
    expect(shown(changed)).toContain('answers on x-home');
    expect(oneLine(shown(changed))).toContain('began with another version of the machine file');
    expect(shown(own)).not.toContain('another version');
  });

  it('says which other machines have sessions, where no machine file was named', () => {
    const millText = readFileSync(mill, 'utf8');
    const header = new SessionFolder(join(below, 'router')).header();
    SessionFolder.create(join(below, 'mill'), { ...header, started: '2026-03-01T00:00:00Z' }, millText);
    expect(oneLine(shown())).toContain(
      'There are sessions of Small mill too: name a machine file with --machine',
    );
    expect(oneLine(shown(own))).not.toContain('Small mill');
    rmSync(join(below, 'mill'), { recursive: true });
  });

  it('finds nothing for a machine of which there is no session', () => {
    const text = shown(mill);
    expect(oneLine(text)).toContain('No session of this machine');
    expect(text).toMatch(/^ {2}found {5}not tested$/m);
    expect(text).not.toContain('answers on');
  });

  it('is no wider than a terminal of 80 columns', () => {
    for (const line of shown(own).replaceAll(below, '').split('\n')) expect(line.length).toBeLessThan(80);
  });
});

import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sessionOf, sessionsBelow } from '../../src/console/last-session.ts';
import { SessionFolder, type SessionHeader, sha256 } from '../../src/session/folder.ts';
import { encodeRecord, verdictRecord } from '../../src/session/journal.ts';
import { verdict } from './events.ts';

const mill = 'machine: Small mill\naxes: { X: { travel: 300 } }\n';
const changed = mill.replace('300', '310');
const lathe = 'machine: Bench lathe\naxes: { Z: { travel: 200 } }\n';
const of = (text: string) => ({ name: /machine: (.*)/.exec(text)?.[1] ?? '', text });

const search: SessionHeader['search'] = {
  subject: 'x-home',
  history: 'fresh',
  stopProved: false,
  earlier: [],
};

/** Sessions by name, in the order in which they began. */
type Put = readonly [
  name: string,
  machineText: string,
  kind: 'with results' | 'broken off' | 'search for a cause',
];

function sessions(...put: readonly Put[]) {
  const below = mkdtempSync(join(tmpdir(), 'tellwire-sessions-'));
  for (const [i, [name, text, kind]] of put.entries()) {
    const header: SessionHeader = {
      format: 1,
      tool: '0',
      rules: 1,
      started: `2026-01-0${i + 1}T00:00:00Z`,
      port: 'bench',
      machineHash: sha256(text),
      checks: ['press'],
      presses: 3,
      restSeconds: 10,
      ...(kind === 'search for a cause' && { search }),
    };
    const folder = SessionFolder.create(join(below, name), header, text);
    const status = kind === 'broken off' ? ('not-tested' as const) : verdict.status;
    folder.write('journal.ndjson', encodeRecord(verdictRecord({ ...verdict, status }, { at: 1, lines: 0 })));
  }
  return below;
}

const chosen = (wanted: string | undefined, ...put: readonly Put[]): string | undefined => {
  const below = sessions(...put);
  return sessionOf(wanted === undefined ? undefined : of(wanted), sessionsBelow(below))?.path.slice(
    below.length + 1,
  );
};

describe('the session that an input map is read from', () => {
  it.each<[rule: string, wanted: string | undefined, put: readonly Put[], is: string | undefined]>([
    [
      'is of the machine whose file was named, however new a session of another machine is',
      mill,
      [
        ['own', mill, 'with results'],
        ['other', lathe, 'with results'],
      ],
      'own',
    ],
    [
      'is the last of several, by when it began and not by its name',
      mill,
      [
        ['z-first', mill, 'with results'],
        ['a-second', mill, 'with results'],
      ],
      'a-second',
    ],
    [
      'is a commissioning rather than a later search for the cause of one switch',
      mill,
      [
        ['whole', mill, 'with results'],
        ['search', mill, 'search for a cause'],
      ],
      'whole',
    ],
    [
      'is one with results rather than a later one that was broken off before any',
      mill,
      [
        ['whole', mill, 'with results'],
        ['broken', mill, 'broken off'],
      ],
      'whole',
    ],
    [
      'is of this very file before one of another version of it',
      mill,
      [
        ['same', mill, 'with results'],
        ['changed', changed, 'with results'],
      ],
      'same',
    ],
    [
      'is of another version of the file where there is none of this one',
      changed,
      [['before', mill, 'with results']],
      'before',
    ],
    ['is a search where nothing else was done', mill, [['s', mill, 'search for a cause']], 's'],
    ['is none where all are of other machines', mill, [['other', lathe, 'with results']], undefined],
    [
      'is the last commissioning of all where no machine file was named',
      undefined,
      [
        ['mill', mill, 'with results'],
        ['lathe', lathe, 'with results'],
        ['search', mill, 'search for a cause'],
      ],
      'lathe',
    ],
  ])('%s', (_rule, wanted, put, is) => expect(chosen(wanted, ...put)).toBe(is));

  it('is looked for among sound sessions: whatever else lies beside them is passed over', () => {
    const below = sessions(['own', mill, 'with results']);
    mkdirSync(join(below, 'notes'));
    mkdirSync(join(below, 'broken'));
    writeFileSync(join(below, 'broken', 'session.json'), '{');
    expect(sessionsBelow(below).map(({ path }) => path)).toEqual([join(below, 'own')]);
    expect(sessionsBelow(join(below, 'none'))).toEqual([]);
  });
});

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replay } from '../../src/session/replay.ts';
import { framed } from '../transport/stream/by-hand.ts';
import { folderWith, type Scripted, scriptedSession } from './scripted.ts';
import { mustBeJudged } from './two-switches.ts';
import { judged, remove, temporaryFolder, virtualSession } from './virtual-session.ts';

type Line = Readonly<Record<string, unknown>> & { readonly kind: string; readonly lines: number };
const linesOf = (journal: Buffer): readonly Line[] =>
  journal
    .toString()
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);

describe('a saved session judged again', () => {
  let whole: Scripted;
  beforeAll(async () => {
    whole = await scriptedSession();
  });

  function judgedAgain(changed: Partial<Scripted>): {
    readonly verdicts: readonly string[];
    readonly parted: boolean;
  } {
    const folder = folderWith({ ...whole, ...changed });
    try {
      const { facts, parted } = replay(folder);
      return { verdicts: judged({ facts }), parted };
    } finally {
      remove(folder);
    }
  }

  it('comes to the verdicts that were given live', () => {
    expect(judgedAgain({})).toEqual({ verdicts: mustBeJudged, parted: false });
  });

  it('comes to them where every verdict was struck out of the journal', () => {
    const kept = linesOf(whole.journal).filter(({ kind }) => kind !== 'verdict');
    expect(linesOf(whole.journal).length - kept.length).toBe(mustBeJudged.length);
    const journal = Buffer.from(kept.map((line) => `${JSON.stringify(line)}\n`).join(''));
    expect(judgedAgain({ journal })).toEqual({ verdicts: mustBeJudged, parted: false });
  });

  it('believes the capture and not the journal where a verdict was written over', () => {
    const journal = Buffer.from(
      whole.journal.toString().replaceAll('"status":"limited"', '"status":"proved"'),
    );
    expect(journal.equals(whole.journal)).toBe(false);
    expect(judgedAgain({ journal }).verdicts).toEqual(mustBeJudged);
  });

  /** Every press that was answered, as the capture lines of its window. */
  const presses = () =>
    linesOf(whole.journal).flatMap((line, i, all) => {
      const ask = line['ask'] as
        | { readonly action?: string; readonly check?: string; readonly subject?: string }
        | undefined;
      const ended = all.slice(i).find((each) => each.kind === 'ended' && each['id'] === line['id']);
      if (line.kind !== 'ask' || ask?.action !== 'press' || ended?.['by'] !== 'seen') return [];
      return [{ name: `${ask.check} ${ask.subject}`, from: line.lines, to: ended.lines }];
    });

  it('does not come to them where the levels of one press were changed, with sums that fit', () => {
    expect(presses().map(({ name }) => name)).toEqual([
      'press x-home',
      'press stop',
      'open-wire x-home',
      'open-wire stop',
    ]);
    for (const { name, from, to } of presses()) {
      const lines = whole.capture.toString('latin1').split('\n');
      const quiet = fieldsOf(lines[from - 1]);
      const changed = lines.map((line, i) => (i >= from && i < to ? withLevels(line, quiet) : line));
      const again = judgedAgain({ capture: Buffer.from(changed.join('\n'), 'latin1') });
      expect(again.verdicts, name).not.toEqual(mustBeJudged);
      const own = again.verdicts.find((line) => line.startsWith(name));
      expect(own === undefined || !mustBeJudged.includes(own) || again.parted, name).toBe(true);
    }
  });

  it('takes a line whose sum no longer fits for no reading at all', () => {
    const [press] = presses();
    const lines = whole.capture.toString('latin1').split('\n');
    const changed = lines.map((line, i) =>
      press && i >= press.from && i < press.to ? line.replace(/,[HL]{2},[01]{2}\*/, ',HL,00*') : line,
    );
    const folder = folderWith({ ...whole, capture: Buffer.from(changed.join('\n'), 'latin1') });
    expect(replay(folder).facts.stream.unreadable['wrong-sum']).toBeGreaterThan(2);
    remove(folder);
  });
});

/** Levels and active values of a captured status. */
const fieldsOf = (line = ''): string => /,([HL]+,[01]+)\*/.exec(line)?.[1] ?? '';

/** The same captured line with other levels and a sum that fits them. */
function withLevels(line: string, levels: string): string {
  const found = /^(\S+ rx )\$(PTWRS,.*,)[HL]+,[01]+\*..(.*)$/.exec(line);
  return found ? `${found[1]}${framed(`${found[2]}${levels}`)}${found[3]}` : line;
}

describe('the report of a saved session, made again elsewhere', () => {
  const built = mkdtempSync(join(tmpdir(), 'again-'));
  const folder = temporaryFolder();
  const live = (name: string) => readFileSync(join(folder, name), 'utf8');

  beforeAll(async () => {
    await virtualSession({ folder, bench: { faults: ['crossed:y-home,z-home', 'normally-open:x-far'] } });
    await build({
      configFile: false,
      logLevel: 'silent',
      build: { ssr: 'tests/session/print-report.ts', outDir: built, emptyOutDir: true },
      ssr: { noExternal: true },
    });
    writeFileSync(join(built, 'clock.mjs'), threeYearsOn);
  }, 120_000);
  afterAll(() => {
    rmSync(built, { recursive: true });
    remove(folder);
  });

  it('is made under a clock that is really three years on', () => {
    const read = ['--import', join(built, 'clock.mjs'), '-e', 'console.log(new Date() - 0, Date.now())'];
    const years = execFileSync(process.execPath, read, { encoding: 'utf8' })
      .trim()
      .split(' ')
      .map((moment) => Math.round(((Number(moment) - Date.now()) / 86_400_000 / 365.25) * 10) / 10);
    expect(years).toEqual([3, 3]);
  });

  it.each([
    { TZ: 'UTC', LANG: 'C' },
    { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
    { TZ: 'America/St_Johns', LANG: 'ar_EG.UTF-8', LC_ALL: 'ar_EG.UTF-8', clock: 'three years on' },
    { TZ: 'Asia/Kolkata', LANG: 'de_DE.UTF-8', clock: 'three years on' },
  ])(
    'has the bytes it had live, under %o',
    ({ clock, ...env }) => {
      const told = clock === undefined ? [] : ['--import', join(built, 'clock.mjs')];
      const printed = execFileSync(process.execPath, [...told, join(built, 'print-report.js'), folder], {
        env: { PATH: process.env['PATH'], ...env },
        encoding: 'utf8',
        maxBuffer: 1 << 27,
      });
      const again = JSON.parse(printed) as Readonly<Record<string, string>>;
      expect(Object.keys(again).sort()).toEqual(['report.html', 'report.json', 'report.md']);
      for (const [name, text] of Object.entries(again)) expect(text === live(name), name).toBe(true);
    },
    60_000,
  );
});

/** Every clock a program can ask, put forward. */
const threeYearsOn = `
const on = 3 * 365.25 * 86_400_000;
const Then = globalThis.Date;
globalThis.Date = class extends Then {
  constructor(...given) { given.length === 0 ? super(Then.now() + on) : super(...given); }
  static now() { return Then.now() + on; }
};
const since = performance.now.bind(performance);
performance.now = () => since() + on;
`;

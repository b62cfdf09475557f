import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { reportFiles } from '../../src/report/formats.ts';
import { weekend } from './weekend.ts';

/** The report is made again by a fresh process that believes itself elsewhere. */
describe('the bytes of a report', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bytes-'));
  const here = JSON.stringify(reportFiles(buildRecord(weekend)));

  beforeAll(async () => {
    await build({
      configFile: false,
      logLevel: 'silent',
      build: { ssr: 'tests/report/print-files.ts', outDir: folder, emptyOutDir: true },
      ssr: { noExternal: true },
    });
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each([
    { TZ: 'UTC', LANG: 'C' },
    { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
    { TZ: 'America/St_Johns', LANG: 'ar_EG.UTF-8', LC_ALL: 'ar_EG.UTF-8' },
  ])('are the same under %o', (env) => {
    const there = execFileSync(process.execPath, [join(folder, 'print-files.js')], {
      env: { PATH: process.env.PATH, ...env },
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    expect(there === here).toBe(true);
  });

  it('do not move with the clock: nothing under words and report asks for the time', () => {
    const there = execFileSync(process.execPath, [join(folder, 'print-files.js')], {
      env: { PATH: process.env.PATH, THREE_YEARS_ON: '1' },
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    expect(there === here).toBe(true);
  });
});

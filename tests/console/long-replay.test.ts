import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { json } from '../../src/report/json.ts';
import { summaryText } from '../../src/report/summary-text.ts';
import { replay } from '../../src/session/replay.ts';
import { surveyFolder } from '../../src/session/survey-folder.ts';
import { writeStatus } from '../../src/transport/stream/native-writer.ts';
import { demoProgram, describeBuilt, program } from './built.ts';

const folder = join(mkdtempSync(join(tmpdir(), 'long-')), 'session');
const capture = join(folder, 'capture.log');
afterAll(() => rmSync(join(folder, '..'), { recursive: true, force: true }));

/** A machine at work goes on behind the last ask: enough of it that the capture is gone through in a thread of its own. */
function goesOn(): void {
  const last =
    readFileSync(capture, 'latin1')
      .trimEnd()
      .split('\n')
      .findLast((line) => line.includes('$PTWRS,')) ?? '';
  const [time, [, seq, clock, , levels, active]] = [
    Number(last.split(' ')[0]),
    last.split('*')[0]?.split(',') ?? [],
  ];
  const lines: string[] = [];
  for (let i = 1; i < 230_000; i++) {
    const line = writeStatus({
      seq: Number(seq) + i,
      ms: Number(clock) + 7 * i,
      activity: 'moving',
      levels: [...(levels ?? '')] as never,
      active: [...(active ?? '')] as never,
      positions: [i % 4000, -i / 8, 0].map((steps) => steps / 80),
    });
    // Now and then one is damaged, and one is missing.
    if (i % 50_001 === 0)
      lines.push(`${(time + 7 * i).toFixed(3)} rx ${line.trimEnd().replace('moving', 'mowing')}\n`);
    else if (i % 40_001 !== 0) lines.push(`${(time + 7 * i).toFixed(3)} rx ${line.trimEnd()}\n`);
  }
  lines.push('99999999.000 tx $PTWRQ*50\\x0d\\x0a\n99999999.500 rx torn');
  appendFileSync(capture, lines.join(''), 'latin1');
}

describeBuilt('a long capture, gone through beside the judging', [], () => {
  beforeAll(() => {
    spawnSync(process.execPath, [demoProgram, '--out', folder], { stdio: 'ignore' });
    goesOn();
  }, 60_000);

  it('is really gone through by another thread, which counts what this one counts', async () => {
    const built = new URL('../../dist/console/survey-beside.js', import.meta.url);
    const { surveyBeside }: typeof import('../../src/console/survey-beside.ts') = await import(built.href);
    const beside = surveyBeside(folder);
    expect(await beside?.done()).toEqual(surveyFolder(folder));
    // The bundle, which the command runs, has its own.
    expect(existsSync(new URL('../../dist/bundle/survey-thread.js', import.meta.url))).toBe(true);
  }, 60_000);

  it('gives the very record that one thread alone gives', () => {
    expect(statSync(capture).size).toBeGreaterThan(17 * 1024 * 1024);
    const { stdout, status } = spawnSync(process.execPath, [program, 'replay', folder, '--json'], {
      encoding: 'utf8',
      maxBuffer: 64 * 1024 * 1024,
    });
    const record = buildRecord(replay(folder).facts);
    expect(record.stream).toMatchObject({ lost: 5 + 4, unreadable: { 'wrong-sum': 4 } });
    expect(stdout).toBe(json(record));
    expect(status).toBe(record.session.exit);
  }, 60_000);

  it('is judged alike where nobody asks what a fault may come from', () => {
    const { stdout } = spawnSync(process.execPath, [program, 'replay', folder], { encoding: 'utf8' });
    expect(stdout).toBe(summaryText(buildRecord(replay(folder).facts)));
  }, 60_000);
});

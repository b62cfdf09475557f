import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { describeBuilt, program } from './built.ts';

vi.setConfig({ testTimeout: 60_000 });

const folder = (): string => join(mkdtempSync(join(tmpdir(), 'tellwire-ends-')), 'session');

interface Ended {
  readonly code: number | null;
  readonly out: readonly string[];
  readonly err: string;
}

/** Runs a commissioning of the bench; `at` is called with its first output. */
function commission(
  args: readonly string[],
  at: (child: ChildProcessWithoutNullStreams) => void,
): Promise<Ended> {
  const child = spawn(process.execPath, [program, 'commission', '--port', 'bench', ...args]);
  let out = '';
  let err = '';
  child.stdout.on('data', (text) => {
    if (out === '') at(child);
    out += String(text);
  });
  child.stderr.on('data', (text) => {
    err += String(text);
  });
  return new Promise((resolve) => {
    child.on('close', (code) => resolve({ code, out: out.trim().split('\n'), err }));
  });
}

const finished = (line: string | undefined): unknown => JSON.parse(line ?? '{}');

describeBuilt('a session that is ended from outside', [], () => {
  it.each<[string, (child: ChildProcessWithoutNullStreams) => void]>([
    ['its operator closes the line', (child) => child.stdin.end()],
    ['it is interrupted', (child) => child.kill('SIGINT')],
    ['it is told to end', (child) => child.kill('SIGTERM')],
    ['its terminal hangs up', (child) => child.kill('SIGHUP')],
  ])('says finished last and leaves with 2 where %s', async (_name, end) => {
    const out = folder();
    const ended = await commission(['--operator', 'json', '--out', out], end);
    expect(ended.err).toBe('');
    expect(ended.code).toBe(2);
    expect(finished(ended.out.at(-1))).toEqual({
      kind: 'finished',
      session: out,
      report: join(out, 'report.html'),
      exit: 2,
    });
  });

  it('keeps its report when nobody reads its lines any more', async () => {
    const ended = await commission(['--operator', 'json', '--out', folder()], (child) =>
      child.stdout.destroy(),
    );
    expect(ended.err).toBe('');
    expect(ended.code).toBe(2);
  });

  it('goes on with --resume, with the scope it began with and no other', async () => {
    const out = folder();
    const scope = ['--only', 'probe', '--checks', 'press', '--presses', '1'];
    const first = await commission(['--operator', 'lines', ...scope, '--out', out], (child) =>
      child.stdin.end(),
    );
    expect(first).toMatchObject({ code: 2, err: '' });
    const other = await commission(
      ['--operator', 'lines', '--presses', '2', '--out', out, '--resume'],
      () => {},
    );
    expect(other.code).toBe(3);
    expect(other.err).toContain('This session began with another --presses.');
    const again = await commission(['--operator', 'json', '--out', out, '--resume'], () => {});
    expect(again).toMatchObject({ code: 0, err: '' });
    expect(again.out.map((line) => JSON.parse(line)).filter(({ kind }) => kind === 'ask')[0]).toHaveProperty(
      'id',
      2,
    );
  });
});

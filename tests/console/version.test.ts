import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { describeBuilt, program } from './built.ts';

const packageFile = new URL('../../package.json', import.meta.url);

/** The shortest of some runs, ms: what else the machine does only ever adds. */
function shortest(args: readonly string[], runs: number, before = Number.POSITIVE_INFINITY): number {
  let least = before;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    execFileSync(process.execPath, args);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

describeBuilt('tellwire --version', [], () => {
  it('says the version of the package', () => {
    const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string };
    expect(execFileSync(process.execPath, [program, '--version'], { encoding: 'utf8' })).toBe(`${version}\n`);
  });

  it('takes at most twice the time of node doing nothing', () => {
    let nothing = Number.POSITIVE_INFINITY;
    let version = Number.POSITIVE_INFINITY;
    for (let turn = 0; turn < 12; turn++) {
      nothing = shortest(['-e', '0'], 1, nothing);
      version = shortest([program, '--version'], 1, version);
    }
    process.stdout.write(
      `node -e 0: ${nothing.toFixed(1)} ms, tellwire --version: ${version.toFixed(1)} ms\n`,
    );
    expect(version).toBeLessThanOrEqual(2 * nothing);
  }, 90_000);
});

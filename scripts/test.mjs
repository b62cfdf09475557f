// npm test: everything that can show the tool wrong, cheapest first. Stops at the first stage that fails.
// What follows -- goes to the tests, as in: npm test -- tests/model
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, inRoot, install, run } from './readiness.mjs';
import { countsLine, judgedSkips } from './test-result.mjs';

const node = (...parts) => [process.execPath, inRoot('node_modules', ...parts)];
const tool = ([program, script], args, env) => run(program, [script, ...args], env);

const stages = [
  ['packages', install],
  [
    'format and lint',
    () => tool(node('@biomejs', 'biome', 'bin', 'biome'), ['check', '--error-on-warnings', '.']),
  ],
  ['types', () => tool(node('typescript', 'bin', 'tsc'), ['-p', 'tsconfig.json', '--noEmit'])],
  ['build', build],
  [
    'import law',
    () =>
      tool(node('dependency-cruiser', 'bin', 'dependency-cruise.mjs'), [
        '--config',
        '.dependency-cruiser.cjs',
        'src',
        'bin',
      ]),
  ],
];

function tests() {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-test-'));
  const file = join(folder, 'result.json');
  try {
    const code = tool(node('vitest', 'vitest.mjs'), [
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
      ...process.argv.slice(2),
    ]);
    return { code, result: JSON.parse(readFileSync(file, 'utf8')) };
  } catch (cause) {
    process.stderr.write(`The tests left no result: ${cause.message}\n`);
    return { code: 1, result: undefined };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function main() {
  for (const [name, stage] of stages) {
    process.stdout.write(`\n== ${name}\n`);
    if (stage() !== 0) {
      process.stdout.write(`\nnpm test: ${name} failed; the tests were not run.\n`);
      return 1;
    }
  }
  process.stdout.write('\n== tests\n');
  const { code, result } = tests();
  if (result === undefined) return 1;
  const { lines, wrong } = judgedSkips(result, process.env.CI === 'true');
  for (const line of lines) process.stdout.write(`${line}\n`);
  process.stdout.write(`${countsLine(result)}\n`);
  return code !== 0 || wrong > 0 || !result.success ? 1 : 0;
}

process.exitCode = main();

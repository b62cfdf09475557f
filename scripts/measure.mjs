// The benchmarks in one go. With --short each in a small size, as a check that they run and a first look at their figures.
// Needs a build: npm run build && node scripts/measure.mjs [--short]
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const short = process.argv.includes('--short');

/** Script, and its arguments in the short form and in full. */
const benchmarks = [
  { script: 'measure-seek.mjs', small: ['50'], full: [] },
  { script: 'measure-replay.mjs', small: ['100000'], full: [] },
  { script: 'measure-faults.mjs', small: ['--short'], full: [] },
  { script: 'measure-learn.mjs', small: ['10'], full: [] },
].filter(({ script }) => existsSync(here(script)));

function run(name, args) {
  const began = performance.now();
  console.log(`\n== ${name} ${args.join(' ')}`.trimEnd());
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
  console.log(`   ${((performance.now() - began) / 1000).toFixed(1)} s`);
  return status === 0;
}

const folder = mkdtempSync(join(tmpdir(), 'tellwire-measure-'));
const passed = [
  run('first run on the built-in bench', [here('../dist/console/demo.js'), '--out', join(folder, 'session')]),
  ...benchmarks.map(({ script, small, full }) => run(script, [here(script), ...(short ? small : full)])),
];
rmSync(folder, { recursive: true, force: true });
const failed = passed.filter((each) => !each).length;
console.log(`\nmeasure: ${passed.length - failed} benchmarks ran, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;

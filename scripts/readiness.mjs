// Brings a fresh clone to where the tool can run: packages as the lock file names them, and a build of the sources as they are.
// Plain Node, no packages: this runs before any are there.
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
export const inRoot = (...parts) => join(root, ...parts);

/** Milliseconds of the last change, 0 where there is nothing. */
const changed = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** The latest change of anything in a folder; a file taken away changes its folder. */
const changedIn = (folder) =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .map((entry) => changed(join(entry.parentPath ?? entry.path, entry.name)))
    .reduce((latest, each) => Math.max(latest, each), changed(folder));

/** Runs a program in the project's folder with its output where ours goes, or `output` says; its exit code, 1 where it could not run or was ended by a signal. */
export function run(program, args, env = {}, output = 'inherit') {
  const { status, error } = spawnSync(program, args, {
    cwd: root,
    stdio: output,
    env: { ...process.env, ...env },
  });
  if (error) process.stderr.write(`${program} could not be run: ${error.message}\n`);
  return status ?? 1;
}

/** npm, by the very npm that called us where it did. */
const npm = (args) =>
  process.env.npm_execpath === undefined
    ? run(process.platform === 'win32' ? 'npm.cmd' : 'npm', args)
    : run(process.execPath, [process.env.npm_execpath, ...args]);

/** Installs where nothing is installed or the lock file is newer. 0 when ready. */
export function install() {
  if (changed(inRoot('node_modules', '.package-lock.json')) >= changed(inRoot('package-lock.json'))) return 0;
  process.stdout.write('Installing the packages the lock file names (npm ci).\n');
  return npm(['ci', '--include=dev', '--no-audit', '--no-fund']);
}

/** Left by a build that went well; the compiler leaves files behind even where it found errors. */
const builtMark = inRoot('dist', '.built');

/** Builds where there is no build or a source is newer. 0 when ready. */
export function build() {
  const built = changed(builtMark);
  const sources = Math.max(
    changedIn(inRoot('src')),
    changed(inRoot('tsconfig.json')),
    changed(inRoot('tsconfig.build.json')),
    changedIn(inRoot('bin')),
    changed(inRoot('scripts', 'bundle.mjs')),
    changed(inRoot('scripts', 'keep-code.mjs')),
  );
  if (built > sources) return 0;
  process.stdout.write('Building (tsc, rolldown).\n');
  const begun = new Date();
  const tsc = inRoot('node_modules', 'typescript', 'bin', 'tsc');
  const code = run(process.execPath, [tsc, '-p', 'tsconfig.build.json']);
  if (code !== 0) return code;
  const bundled = run(process.execPath, [inRoot('scripts', 'bundle.mjs')]);
  if (bundled !== 0) return bundled;
  writeFileSync(builtMark, '');
  // What changed while the compiler ran is not in the build.
  utimesSync(builtMark, begun, begun);
  return 0;
}

// npm start: installs, builds, and commissions the built-in bench. What follows -- goes to the bench: --hands-on, --out <folder>.
import { spawn } from 'node:child_process';
import { build, inRoot, install, root } from './readiness.mjs';

/** The tool's own failure, as everywhere in tellwire. */
const failed = 3;

const outcome = {
  0: 'done: everything was found that should be, and nothing more.',
  1: 'done, with findings: see the report.',
  2: 'stopped before the end, or evidence is missing: see the report.',
  3: 'the tool failed, or was called in a way it does not know; the reason stands above.',
};
const handsOff = { 1: 'what was found is not what was planted: the comparison stands above.' };

/** The last line, whatever happened. */
function end(code, words) {
  process.stdout.write(`npm start (exit ${code}): ${words}\n`);
  process.exitCode = code;
}

/** Why the bench cannot be started, or undefined where it can. */
function hindrance() {
  const [major = 0] = process.versions.node.split('.').map(Number);
  if (major < 20) return `this is Node ${process.versions.node}; tellwire needs 20 or later.`;
  if (install() !== 0) return 'the packages could not be installed; what npm said stands above.';
  if (build() !== 0) return 'the build failed; what the compiler said stands above.';
  return undefined;
}

function start(args) {
  const handsOn = args.includes('--hands-on');
  const bench = spawn(process.execPath, [inRoot('dist', 'console', 'demo.js'), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  // The bench hears the same signals and closes its session; we wait for it.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => {});
  bench.on('error', (cause) => end(failed, `the bench could not be started: ${cause.message}`));
  bench.on('exit', (code) => {
    if (code === 0 && args.some((arg) => arg === '--help' || arg === '-h')) return end(0, 'nothing was run.');
    const words = (handsOn ? undefined : handsOff[code ?? failed]) ?? outcome[code ?? failed];
    end(code ?? failed, words ?? 'ended early.');
  });
}

const hindered = hindrance();
if (hindered === undefined) start(process.argv.slice(2));
else end(failed, hindered);

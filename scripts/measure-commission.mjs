// Prints how long the whole commissioning of the sound three-axis bench takes in virtual time, all checks, from opening the port to the
// written report. Needs a build: npm run build && npm run measure:commission [-- --json]
// Node keeps four threads to help the engine, whatever the machine has; where it has two processors they take turns with the work that is
// measured, which costs it half a second. So npm has this run with one of them.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { keepMemorySteady } from '../dist/console/engine.js';

/** ms for which this thread had a processor; beside other work the clock on the wall counts that work too. Elsewhere than on Linux that of all threads. */
function processorTime() {
  try {
    return Number(readFileSync('/proc/thread-self/schedstat', 'utf8').split(' ')[0]) / 1e6;
  } catch {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  }
}

async function timed(work) {
  const [processor, wall] = [processorTime(), performance.now()];
  const result = await work();
  return { result, processor: processorTime() - processor, wall: performance.now() - wall };
}

// As the program does before anything else.
keepMemorySteady();
const loading = await timed(async () => ({
  ...(await import('../dist/console/bench-wiring.js')),
  ...(await import('../dist/diagnose/checks/registry.js')),
  ...(await import('../dist/session/commission.js')),
}));
const { benchInVirtualTime, benchMachineText, commission, registered } = loading.result;
const place = mkdtempSync(join(tmpdir(), 'tellwire-measure-'));
const { source, time, face, pass } = benchInVirtualTime([]);
const whole = await timed(() =>
  pass(
    commission({
      source,
      time,
      face,
      folder: join(place, 'session'),
      resume: false,
      machineText: benchMachineText,
      checks: registered,
      presses: 3,
      restSeconds: 10,
      only: undefined,
      toolVersion: 'measured',
      startedUtc: '2026-01-02T03:04:05Z',
    }),
  ),
);
rmSync(place, { recursive: true, force: true });

const { facts } = whole.result;
const told = {
  checks: facts.asked.checks,
  asks: facts.dialogue.length,
  lines: facts.stream.lines,
  verdicts: facts.verdicts.map(({ check, subject, status }) => `${check} ${subject}: ${status}`),
  virtual: time.now() / 1000,
  loading: { processor: loading.processor, wall: loading.wall },
  commissioning: { processor: whole.processor, wall: whole.wall },
};
if (process.argv.includes('--json')) console.log(JSON.stringify(told));
else {
  const seconds = ({ processor, wall }) =>
    `${(processor / 1000).toFixed(2)} s of processor, ${(wall / 1000).toFixed(2)} s on the wall`;
  console.log(`${told.asks} asks, ${told.lines} lines, ${told.verdicts.length} verdicts`);
  console.log(`as the machine and the person take it   ${told.virtual.toFixed(0)} s`);
  console.log(`the commissioning in virtual time       ${seconds(told.commissioning)}`);
  console.log(`before it, loading the program          ${seconds(told.loading)}`);
}

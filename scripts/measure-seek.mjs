// Prints how soon the seek watch raises its wrong-way alarm over seeded runs with flicker, jitter and lost reports, and how often it raises
// any alarm on a right-way seek. Needs a build: npm run build && npm run measure:seek [-- <runs>]
import { SeekWatch } from '../dist/diagnose/seek/watch.js';
import { measureSeeks } from './seek-runs.mjs';

const runs = Number(process.argv[2] ?? 500);
const { wrongWay, rightWay } = measureSeeks(SeekWatch, runs);

const late = wrongWay.filter((run) => run.delay === undefined || run.delay > 2);
console.log(`wrong-way seeks            ${wrongWay.length}`);
console.log('alarm at which report after the true motion passed two position steps (0: before it had):');
const delays = new Map();
for (const { delay } of wrongWay) {
  const report = delay === undefined ? 'never' : Math.max(0, delay);
  delays.set(report, (delays.get(report) ?? 0) + 1);
}
for (const [delay, count] of [...delays].sort(([a], [b]) =>
  String(a).localeCompare(String(b), 'en', { numeric: true }),
))
  console.log(
    `  ${String(delay).padStart(5)}  ${String(count).padStart(5)}  ${'#'.repeat(Math.ceil((60 * count) / wrongWay.length))}`,
  );
const way = wrongWay
  .map((run) => run.travelled)
  .filter((each) => each !== undefined)
  .sort((a, b) => a - b);
const at = (share) =>
  (way[Math.min(way.length - 1, Math.floor(share * way.length))] ?? Number.NaN).toFixed(3);
console.log(`travelled at the alarm, mm  median ${at(0.5)}  95 % ${at(0.95)}  most ${at(1)}`);
console.log(`later than two reports      ${late.length}`);
console.log(`right-way seeks             ${rightWay.length}`);
console.log(`any alarm on them           ${rightWay.filter((run) => run.alarms.length > 0).length}`);
for (const run of rightWay)
  for (const alarm of run.alarms) console.log(`  seed ${run.seed}: ${alarm.kind} at ${alarm.position}`);
if (late.length > 0 || rightWay.some((run) => run.alarms.length > 0)) process.exitCode = 1;

// A long capture replayed and judged by the program itself, beside Node's own readline that merely goes through the same file, in the same
// run. Each is a process of its own, measured from its start to its end: wall clock and processor.
// Needs a build: npm run build && npm run measure:replay [-- <lines>]
import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeStatus } from '../dist/transport/stream/native-writer.js';

const beside = (name) => fileURLToPath(new URL(name, import.meta.url));
const works = {
  replay: {
    says: 'replayed and judged',
    words: (file) => [beside('../bin/tellwire.js'), 'replay', dirname(file)],
  },
  readline: { says: 'readline, for await', words: (file) => [beside('measure-replay/readline.mjs'), file] },
  events: {
    says: "readline, 'line' events",
    words: (file) => [beside('measure-replay/readline-events.mjs'), file],
  },
};

/** One of the works in a process of its own: seconds by the clock and of processor, peak of resident memory in MB. */
function measured(name, file) {
  const cost = new URL('measure-replay/cost.mjs', import.meta.url).href;
  const { output, status } = spawnSync(process.execPath, ['--import', cost, ...works[name].words(file)], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit', 'pipe'],
  });
  // What was judged may be a fault; that it could not be judged is 3.
  if (status === null || status > 2) throw new Error(`${name} failed`);
  const said = (name === 'replay' ? /^\d+ .*$/m : /^.*$/m).exec(output[1])?.[0] ?? '';
  return { said, ...JSON.parse(output[3]) };
}

/**
 * A session of the bench, its capture gone on with as a machine at work would: moving to both sides of its zero, reports that come a little
 * sooner or later, an input changing and a line damaged now and then, a declaration every five seconds.
 */
function longSession(folder, lines) {
  const demo = fileURLToPath(new URL('../dist/console/demo.js', import.meta.url));
  spawnSync(process.execPath, [demo, '--out', folder], { stdio: 'ignore' });
  const file = join(folder, 'capture.log');
  if (!existsSync(file)) throw new Error('the demo left no capture');
  const kept = readFileSync(file, 'latin1');
  const last = kept
    .trimEnd()
    .split('\n')
    .findLast((line) => line.includes('$PTWRS,'));
  let text = [];
  let [time, count, clock] = [
    Number(last.split(' ')[0]),
    Number(last.split(',')[1]),
    Number(last.split(',')[2]),
  ];
  const fields = last.slice(last.indexOf('$')).split('*')[0].split(',');
  const [rest, on] = [[...fields[4]], [...fields[5]]];
  const place = fields.slice(6).map(Number);
  const declaration = kept.match(/\$PTWRD,.*/)[0];
  for (let i = kept.split('\n').length - 1; i < lines; i++) {
    const pace = 6 + ((i * i) % 3);
    time += pace + ((i * 7) % 19) / 20 - 0.45;
    clock += pace;
    if (i % 714 === 0) {
      text.push(`${time.toFixed(3)} rx ${declaration}\n`);
      continue;
    }
    count += 1;
    if (i % 5000 === 0) rest[0] = rest[0] === 'H' ? 'L' : 'H';
    const line = writeStatus({
      seq: count,
      ms: clock,
      activity: 'moving',
      levels: rest,
      active: on,
      positions: place.map((each, axis) => each + ((i * (axis + 1)) % 4000) / 80 - 25),
    }).trimEnd();
    text.push(`${time.toFixed(3)} rx ${i % 1000 === 0 ? line.replace('moving', 'mowing') : line}\n`);
    if (text.length >= 20_000) {
      appendFileSync(file, text.join(''), 'latin1');
      text = [];
    }
  }
  appendFileSync(file, text.join(''), 'latin1');
  return file;
}

async function main() {
  const lines = Number(process.argv[2] ?? 2_000_000);
  const work = mkdtempSync(join(tmpdir(), 'tellwire-replay-'));
  try {
    const short = longSession(join(work, 'short'), Math.round(lines / 4));
    const long = longSession(join(work, 'long'), lines);
    // A machine is now faster, now slower: they take turns, and the middle run of each counts.
    const turns = process.argv[2] === undefined ? 9 : 3;
    const runs = [long, short].flatMap((file) =>
      Array.from({ length: turns }, () => Object.keys(works)).flatMap((names) =>
        names.map((name) => ({ name, file, ...measured(name, file) })),
      ),
    );
    const middle = (name, file, what) =>
      sorted(runs.filter((run) => run.name === name && run.file === file).map((run) => run[what]))[
        (turns - 1) / 2
      ];
    for (const file of [long, short])
      for (const name of Object.keys(works)) {
        const own = runs.filter((run) => run.name === name && run.file === file);
        const took = sorted(own.map((run) => run.took));
        console.log(
          `${works[name].says.padEnd(24)} ${file === long ? 'long ' : 'short'} ${seconds(middle(name, file, 'took'))} s (${took[0].toFixed(2)} to ${took.at(-1).toFixed(2)})  ${seconds(middle(name, file, 'cpu'))} s of processor  ${Math.max(
            ...own.map(({ most }) => most),
          )
            .toFixed(0)
            .padStart(4)} MB  ${own[0].said}`,
        );
      }
    // What does not grow with the length, starting the program and judging what was asked, drops out of the difference.
    const further = (name, what) => (middle(name, long, what) - middle(name, short, what)) / (lines * 0.75);
    const whole = (name, what) => middle(name, long, what) - further(name, what) * lines;
    for (const name of Object.keys(works))
      console.log(
        `${works[name].says.padEnd(24)} each further line ${micros(further(name, 'took'))} us, ${micros(further(name, 'cpu'))} us of processor; besides, whatever the length, ${seconds(whole(name, 'took'))} s, ${seconds(whole(name, 'cpu'))} s of processor`,
      );
    const memory = (file) =>
      Math.max(...runs.filter((run) => run.name === 'replay' && run.file === file).map(({ most }) => most));
    const times = (what) => (middle('replay', long, what) / middle('readline', long, what)).toFixed(2);
    const asFast = middle('replay', long, 'took') <= middle('readline', long, 'took');
    const small = memory(long) < 150;
    const steady = memory(long) - memory(short) < 15;
    const answer = (yes) => (yes ? 'yes' : 'NO');
    const all = `${times('took')} times as long as readline, ${times('cpu')} times its processor`;
    // What does not grow with the length is nearly all of a short file's time: the aims are stated for the usual one.
    if (process.argv[2] !== undefined) console.log(`${all}; the aims are stated for 2,000,000 lines`);
    else {
      console.log(
        `${all}; as fast: ${answer(asFast)}; under 150 MB: ${answer(small)}; memory does not grow with length: ${answer(steady)}`,
      );
      if (!(asFast && small && steady)) process.exitCode = 1;
    }
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

const sorted = (values) => values.toSorted((a, b) => a - b);
const seconds = (value) => value.toFixed(2).padStart(5);
const micros = (value) => (value * 1e6).toFixed(2);

await main();

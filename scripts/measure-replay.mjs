// A long capture replayed and judged, beside Node's own readline that merely goes through the same file, in the same run.
// Needs a build: npm run build && npm run measure:replay [-- <lines>]
import { spawnSync } from 'node:child_process';
import { appendFileSync, createReadStream, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { writeStatus } from '../dist/transport/stream/native-writer.js';

const own = fileURLToPath(import.meta.url);
const works = {
  /** As Node's own documentation reads a file line by line. */
  async readline(file) {
    let lines = 0;
    for await (const _line of createInterface({ input: createReadStream(file), crlfDelay: Infinity }))
      lines++;
    return `${lines} lines`;
  },
  async events(file) {
    let lines = 0;
    const reader = createInterface({ input: createReadStream(file), crlfDelay: Infinity });
    reader.on('line', () => lines++);
    await new Promise((end) => reader.on('close', end));
    return `${lines} lines`;
  },
  async replay(file) {
    // As the program itself begins.
    const { keepMemorySteady } = await import('../dist/console/steady-memory.js');
    keepMemorySteady();
    const { replay } = await import('../dist/session/replay.js');
    const { facts } = replay(join(file, '..'));
    return `${facts.stream.lines} lines, ${facts.verdicts.length} verdicts, ${facts.verdicts.filter(({ status }) => status === 'proved').length} proved`;
  },
};

/** One of the works in a process of its own: seconds, peak of resident memory in MB. */
function measured(name, file) {
  const { stdout, status } = spawnSync(process.execPath, [own, '--work', name, file], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  if (status !== 0) throw new Error(`${name} failed`);
  return JSON.parse(stdout);
}

/** A session of the bench, its capture gone on with as a machine at work would: moving, with an input changing now and then. */
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
  for (let i = kept.split('\n').length - 1; i < lines; i++) {
    time += 7;
    clock += 7;
    count += 1;
    if (i % 5000 === 0) rest[0] = rest[0] === 'H' ? 'L' : 'H';
    const line = writeStatus({
      seq: count,
      ms: clock,
      activity: 'moving',
      levels: rest,
      active: on,
      positions: place.map((each, axis) => each + ((i * (axis + 1)) % 4000) / 80),
    });
    text.push(`${time.toFixed(3)} rx ${line.trimEnd()}\n`);
    if (text.length === 20_000) {
      appendFileSync(file, text.join(''), 'latin1');
      text = [];
    }
  }
  appendFileSync(file, text.join(''), 'latin1');
  return file;
}

async function main() {
  if (process.argv[2] === '--work') {
    const [, , , name, file] = process.argv;
    const begun = performance.now();
    const busy = process.cpuUsage();
    const said = await works[name](file);
    const took = (performance.now() - begun) / 1000;
    const { user, system } = process.cpuUsage(busy);
    const cpu = (user + system) / 1e6;
    const most = process.resourceUsage().maxRSS / 1024;
    process.stdout.write(JSON.stringify({ said, took, cpu, most }));
    return;
  }
  const lines = Number(process.argv[2] ?? 2_000_000);
  const work = mkdtempSync(join(tmpdir(), 'tellwire-replay-'));
  try {
    const short = longSession(join(work, 'short'), Math.round(lines / 4));
    const long = longSession(join(work, 'long'), lines);
    const runs = [
      ['replay', short],
      ['readline', short],
      ['replay', long],
      ['readline', long],
      ['events', long],
      ['replay', long],
      ['readline', long],
      ['replay', short],
      ['readline', short],
    ].map(([name, file]) => ({ name, file, ...measured(name, file) }));
    const words = {
      replay: 'replayed and judged',
      readline: 'readline, for await',
      events: "readline, 'line' events",
    };
    for (const { name, said, took, cpu, most } of runs)
      console.log(
        `${words[name].padEnd(24)} ${took.toFixed(2).padStart(7)} s  ${cpu.toFixed(2).padStart(7)} s of processor  ${most.toFixed(0).padStart(5)} MB  ${said}`,
      );
    const best = (name, file, what = 'took') =>
      Math.min(...runs.filter((run) => run.name === name && run.file === file).map((run) => run[what]));
    const memory = (file) =>
      Math.max(...runs.filter((run) => run.name === 'replay' && run.file === file).map(({ most }) => most));
    // What does not grow with the length, loading the program and judging what was asked, drops out of the difference.
    const further = (name, what) =>
      (((best(name, long, what) - best(name, short, what)) / (lines * 0.75)) * 1e6).toFixed(2);
    const each = (name) => `${further(name, 'took')} us, ${further(name, 'cpu')} us of processor`;
    console.log(`each further line: replayed and judged ${each('replay')}; readline ${each('readline')}`);
    const share = best('replay', long) / best('readline', long);
    const asFast = best('replay', long) <= best('readline', long);
    const small = memory(long) < 150;
    const steady = memory(long) - memory(short) < 15;
    console.log(
      `${share.toFixed(2)} times as long as readline; as fast: ${asFast ? 'yes' : 'NO'}; under 150 MB: ${small ? 'yes' : 'NO'}; memory does not grow with length: ${steady ? 'yes' : 'NO'}`,
    );
    // A shorter file than the one the aims are stated for is only printed.
    if (process.argv[2] === undefined && !(asFast && small && steady)) process.exitCode = 1;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

await main();

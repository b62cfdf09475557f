import { expect, it } from 'vitest';
import { inputs } from './corpus.ts';
import { eachNamed, retelling } from './retelling.ts';
import { drawnFrom, runSeed } from './run-seed.ts';
import { learnOn } from './stand.ts';

const seed = runSeed + 400;
const megabyte = 1024 * 1024;

let made = 0;
/** Lines that nobody sends who means well. */
const hostile: Readonly<Record<string, () => readonly string[]>> = {
  'lines nested ten thousand deep': () => ['['.repeat(10_000), '{"a":'.repeat(10_000), '('.repeat(10_000)],
  'names that programs trip over': () => [
    '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}',
    '__proto__=1 constructor=2 toString=3 hasOwnProperty(4)',
  ],
  'escape sequences, whole and torn': () => [
    '\x1b[2J\x1b[31mkap=1\x1b[0m',
    '\x1b['.repeat(2000),
    '\x1b]0;title\x07',
  ],
  'numbers of four hundred figures': () => [
    `kap=${'9'.repeat(400)}`,
    `-${'1'.repeat(400)}.${'5'.repeat(400)}`,
  ],
  'names never heard before': () => Array.from({ length: 3 }, () => `n${made++}=1 m${made++}=2 k${made++}=0`),
  'more values than any line has': () => [Array.from({ length: 2000 }, (_, i) => i % 2).join(',')],
};

it.each(Object.entries(hostile))(
  'with %s in between the inputs are bound all the same, in bounded time and memory',
  { timeout: 120_000 },
  async (_, lines) => {
    const plain = retelling(seed, (told) => told);
    let heard = 0;
    const before = process.memoryUsage().heapUsed;
    const begun = process.cpuUsage();
    const { outcome } = await learnOn({
      bench: { speak: eachNamed, seed, telling: { rate: 5 } },
      hands: { seed },
      through: (line) => (heard++ % 4 === 0 ? [...lines(), ...plain(line)] : plain(line)),
    });
    expect(
      outcome.description.inputs.map(({ name }) => name),
      drawnFrom(seed),
    ).toEqual(inputs);
    expect(process.cpuUsage(begun).user / 1e6).toBeLessThan(30);
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(400 * megabyte);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  },
);

it('a line of ten megabytes without an end is one unreadable line, and costs no more than its first 8 KiB', {
  timeout: 120_000,
}, async () => {
  const plain = retelling(seed, (told) => told);
  const endless = 'k'.repeat(10 * megabyte);
  let heard = 0;
  const begun = process.cpuUsage();
  const { outcome, capture } = await learnOn({
    bench: { speak: eachNamed, seed, telling: { rate: 5 } },
    hands: { seed },
    through: (line) => (heard++ % 100 === 50 ? [endless, ...plain(line)] : plain(line)),
  });
  expect(
    outcome.description.inputs.map(({ name }) => name),
    drawnFrom(seed),
  ).toEqual(inputs);
  expect(Math.max(...capture.map(({ length }) => length))).toBeLessThan(9000);
  expect(capture.some((line) => line.includes(`rx+${10 * megabyte + 1 - 8192}`))).toBe(true);
  expect(process.cpuUsage(begun).user / 1e6).toBeLessThan(30);
});

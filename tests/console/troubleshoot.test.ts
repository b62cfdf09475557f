import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { describeBuilt, program } from './built.ts';
import { tellwire } from './run.ts';

it('wants a port at the machine, or a session far from it', async () => {
  const { code, err } = await tellwire('troubleshoot', 'x-home');
  expect(code).toBe(3);
  expect(err).toMatch(/No port was named/);
}, 120_000);

it('wants a switch of the machine file, and says which there are', async () => {
  const { code, err } = await tellwire('troubleshoot', 'doors', '--port', 'bench', '--operator', 'json');
  expect(code).toBe(3);
  expect(err).toMatch(/doors\/flap and doors\/hatch/);
}, 120_000);

type Line = Readonly<Record<string, unknown>>;

/** A program whose output is one JSON object a line. */
function talking(...words: readonly string[]): {
  child: ChildProcess;
  said: Line[];
  until: (kind: string) => Promise<Line>;
} {
  const child = spawn(process.execPath, [program, ...words]);
  const said: Line[] = [];
  const lines = createInterface({ input: child.stdout });
  const waiting: (() => void)[] = [];
  lines.on('line', (text) => {
    said.push(JSON.parse(text) as Line);
    for (const each of waiting) each();
  });
  const until = (kind: string) =>
    new Promise<Line>((resolve) => {
      const look = () => {
        const found = said.find((each) => each['kind'] === kind);
        if (found) resolve(found);
      };
      waiting.push(look);
      look();
    });
  return { child, said, until };
}

describeBuilt('tellwire troubleshoot', [], () => {
  it('works beside the operator’s own program, at the second address of inline', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'tellwire-troubleshoot-'));
    const file = join(folder, 'machine.yaml');
    writeFileSync(file, scenarioFile);
    const bench = talking('bench', '--serve', 'tcp://127.0.0.1:0', '--fault', 'polarity-reversed:x-home');
    const port = String((await bench.until('serving'))['port']);
    const inline = talking('inline', '--port', port, '--out', join(folder, 'kept.log'), '--json');
    const beside = String((await inline.until('serving'))['beside']);
    const search = talking(
      ...['troubleshoot', 'x-home', '--port', beside, '--machine', file],
      ...['--operator', 'json', '--out', join(folder, 'session')],
    );
    let answered = 0;
    const answer = setInterval(() => {
      const ask = search.said.findLast((each) => each['kind'] === 'ask');
      const id = Number(ask?.['id'] ?? 0);
      if (!ask || id <= answered) return;
      answered = id;
      const allowed = ask['answers'] as readonly string[];
      const { topic, action } = ask;
      if (action === 'hands-off') return;
      const word =
        topic === 'touched' || topic === 'mended'
          ? 'no'
          : topic === 'settings' || topic === 'propped'
            ? 'yes'
            : action === 'power'
              ? 'done'
              : 'not-sure';
      search.child.stdin?.write(
        `${JSON.stringify({ id, answer: allowed.includes(word) ? word : 'not-sure' })}\n`,
      );
    }, 50);
    const cause = await search.until('cause');
    await once(search.child, 'close');
    clearInterval(answer);
    expect(cause['named']).toContain('polarity-inverted');
    expect(search.said.at(-1)).toMatchObject({ kind: 'finished', exit: 1 });
    for (const { child } of [inline, bench]) {
      child.kill('SIGTERM');
      await once(child, 'close');
    }
    rmSync(folder, { recursive: true });
  }, 120_000);
});

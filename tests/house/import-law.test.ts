import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** A small house with one thing out of order, judged by the law of this one. */
const files: Readonly<Record<string, string>> = {
  'src/model/noun.ts': "import type { Talk } from '../session/talk.ts';\nexport type Noun = Talk;\n",
  'src/session/talk.ts': "import { face } from '../console/face.ts';\nexport type Talk = typeof face;\n",
  'src/console/face.ts': "import blessed from 'blessed';\nexport const face = blessed;\n",
  'src/console/opens.ts': "import { SerialPort } from 'serialport';\nexport const opens = SerialPort;\n",
  'src/diagnose/judge.ts': "import { readFileSync } from 'node:fs';\nexport const judge = readFileSync;\n",
  'src/diagnose/procedures/ask.ts': 'export const ask = 1;\n',
  'src/diagnose/judging/asks.ts': "import { ask } from '../procedures/ask.ts';\nexport const asks = ask;\n",
  'src/diagnose/judging/in-order.ts': 'export const evidence = 1;\n',
  'src/diagnose/procedures/in-order.ts':
    "import { evidence } from '../judging/in-order.ts';\nexport const gathered = evidence;\n",
  'src/diagnose/round.ts': "import { trip } from './trip.ts';\nexport const round = () => trip;\n",
  'src/diagnose/trip.ts': "import { round } from './round.ts';\nexport const trip = () => round;\n",
  'src/report/page.ts': "import { judge } from '../diagnose/judge.ts';\nexport const page = judge;\n",
  'src/words/say.ts': "import { world } from '../bench/world.ts';\nexport const say = world;\n",
  'src/transport/wire.ts': "import { say } from '../words/say.ts';\nexport const wire = say;\n",
  'src/bench/world.ts': "import { judge } from '../diagnose/judge.ts';\nexport const world = judge;\n",
  'src/report/utils/odd.ts': 'export const odd = 1;\n',
  'src/report/uses-odd.ts': "import { odd } from './utils/odd.ts';\nexport const usesOdd = odd;\n",
  'src/model/in-order.ts': 'export const inOrder = 1;\n',
  'src/report/in-order.ts':
    "import { inOrder } from '../model/in-order.ts';\nexport const reported = inOrder;\n",
};

describe('the import law', () => {
  const house = mkdtempSync(join(tmpdir(), 'tellwire-law-'));
  let broken: string[] = [];

  beforeAll(() => {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(join(house, dirname(path)), { recursive: true });
      writeFileSync(join(house, path), text);
    }
    for (const file of ['.dependency-cruiser.cjs', 'tsconfig.json', 'package.json'])
      cpSync(file, join(house, file));
    symlinkSync(resolve('node_modules'), join(house, 'node_modules'), 'dir');
    const cruise = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
    const { stdout } = spawnSync(
      process.execPath,
      [cruise, '--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'src'],
      { cwd: house, encoding: 'utf8' },
    );
    const { summary } = JSON.parse(stdout) as {
      summary: { violations: { rule: { name: string }; from: string; to: string }[] };
    };
    broken = summary.violations.map(({ rule, from }) => `${rule.name} ${from}`);
  }, 60_000);

  afterAll(() => rmSync(house, { recursive: true, force: true }));

  it.each([
    ['a noun that knows the session, by its type alone', 'model-keeps-its-room src/model/noun.ts'],
    ['a session that knows a face', 'session-keeps-its-room src/session/talk.ts'],
    ['a report that judges', 'report-keeps-its-room src/report/page.ts'],
    ['words that know the bench', 'words-keeps-its-room src/words/say.ts'],
    ['a transport that talks', 'transport-keeps-its-room src/transport/wire.ts'],
    ['a bench that asks the judge', 'bench-keeps-its-room src/bench/world.ts'],
    ['a judge that asks', 'judging-asks-nothing src/diagnose/judging/asks.ts'],
    ['a second door to the bench', 'one-door-to-the-bench src/words/say.ts'],
    ['a judge that reads files', 'pure-rooms-do-no-io src/diagnose/judge.ts'],
    ['a second file that opens ports', 'one-file-touches-the-wire src/console/opens.ts'],
    ['a second file that draws the screen', 'one-file-knows-the-screen src/console/face.ts'],
    ['a circle', 'no-cycles src/diagnose/round.ts'],
    ['a folder of leftovers', 'no-utils src/report/uses-odd.ts'],
  ])('catches %s', (_, violation) => {
    expect(broken).toContain(violation);
  });

  it('lets what is in order pass', () => {
    expect(broken.filter((each) => each.includes('in-order'))).toEqual([]);
  });
});

import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { demoProgram, describeBuilt } from './built.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const work = mkdtempSync(join(tmpdir(), 'kept-code-'));
const bundle = join(work, 'dist', 'bundle');
const session = join(work, 'session');
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** An installation of its own, so that what is spoilt in it harms nobody. */
function replay(...flags: string[]) {
  const words = [...flags, join(work, 'bin', 'tellwire.js'), 'replay', session];
  const { stdout, stderr, status } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  return { stdout, stderr, status };
}

/** Names of the files whose code an engine refuses that runs as the program has it run. */
const refusals = `
  const { readdirSync, readFileSync } = require('node:fs');
  require('node:v8').setFlagsFromString('--no-allocation-site-pretenuring');
  for (const name of readdirSync('.').filter((each) => each.endsWith('.code'))) {
    const text = require('node:module').wrap(readFileSync(name.slice(0, -5), 'utf8'));
    const script = new (require('node:vm').Script)(text, { cachedData: readFileSync(name).subarray(20) });
    if (script.cachedDataRejected) console.log(name);
  }`;

const kept = () => readdirSync(bundle).filter((name) => name.endsWith('.code'));

describeBuilt('the code that the engine made when the program was built', [], () => {
  let sound: ReturnType<typeof replay>;

  beforeAll(() => {
    for (const part of ['bin', 'dist/bundle', 'package.json'])
      cpSync(join(root, part), join(work, part), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(work, 'node_modules'), 'dir');
    spawnSync(process.execPath, [demoProgram, '--out', session]);
    sound = replay();
  }, 60_000);

  it('is there, and the program says what it has to say', () => {
    expect(kept().length).toBeGreaterThan(10);
    expect(sound).toMatchObject({ status: 1, stderr: '' });
    expect(sound.stdout).toContain('9 switches: 3 failed');
  });

  it('is taken up by the engine that made it', () => {
    const { stdout } = spawnSync(process.execPath, ['-e', refusals], { cwd: bundle, encoding: 'utf8' });
    expect(stdout).toBe('');
  });

  it('is left aside by an engine with other flags, which says the same', () =>
    expect(replay('--no-opt')).toEqual(sound));

  it('is left aside where it was spoilt, cut short or belongs to another text', () => {
    const [bit = '', cut = '', other = '', foreign = ''] = kept().map((name) => join(bundle, name));
    const bytes = readFileSync(bit);
    const middle = bytes.length >> 1;
    bytes.writeUInt8(bytes.readUInt8(middle) ^ 0x10, middle);
    writeFileSync(bit, bytes);
    writeFileSync(cut, readFileSync(cut).subarray(0, 12));
    writeFileSync(other, readFileSync(foreign));
    expect(replay()).toEqual(sound);
  });

  it('may be missing', () => {
    for (const name of kept()) rmSync(join(bundle, name));
    expect(replay()).toEqual(sound);
  });

  it('is none where nothing was built, and the program says what to do', () => {
    rmSync(join(work, 'dist'), { recursive: true });
    const { stdout, stderr, status } = replay();
    expect([stdout, status]).toEqual(['', 3]);
    expect(stderr).toMatch(/^tellwire: this copy of the program is not built yet\.\n {2}Try: npm run build/);
  });
});

import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { demoProgram, describeBuilt } from './built.ts';

const demo = (...words: string[]) => {
  const { stdout, stderr, status } = spawnSync(process.execPath, [demoProgram, ...words], {
    encoding: 'utf8',
  });
  return { stdout, stderr, status };
};

describeBuilt('what stands behind npm start --', [], () => {
  it.each([
    ['--hand-on', "Unknown option '--hand-on'."],
    ['bench', "Unexpected argument 'bench'."],
    ['--out', "Option '--out <value>' argument missing."],
  ])('is said to be wrong and what may stand there, as all wrong usage is: %s', (word, found) => {
    const { stdout, stderr, status } = demo(word);
    expect([stdout, status]).toEqual(['', 3]);
    expect(stderr.split('\n')[0]).toBe(`tellwire: ${found}`);
    expect(stderr).toMatch(/Try: .*--hands-on .*--out <folder>/);
    expect(stderr).not.toMatch(/defect|at .*\.js:/);
  });

  it('is listed when asked for, and nothing is run', () => {
    const { stdout, status } = demo('--help');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^After `npm start --` you can write --hands-on/);
  });
});

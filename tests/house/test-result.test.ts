import { describe, expect, it } from 'vitest';
// @ts-expect-error the scripts are plain JavaScript: they run before anything is installed
import { countsLine, judgedSkips } from '../../scripts/test-result.mjs';

const test = (status: string, fullName: string) => ({ status, fullName });
const run = (...files: { status: string; assertionResults: ReturnType<typeof test>[] }[]) => {
  const all = files.flatMap((file) => file.assertionResults);
  const count = (status: string) => all.filter((each) => each.status === status).length;
  return { numPassedTests: count('passed'), numFailedTests: count('failed'), testResults: files };
};
const good = test('passed', 'the codec reads what it wrote');
const onPty = test('skipped', 'serial over a pty (needs socat, which is not installed here) is heard');
const onMac = test('skipped', 'a port (needs macOS) is listed');
const unsaid = test('pending', 'the moon rises');

describe('the last line of the tests', () => {
  it('counts what passed, failed and was left out', () => {
    const file = { status: 'failed', assertionResults: [good, test('failed', 'x'), onPty] };
    expect(countsLine(run(file))).toBe('1 passed, 1 failed, 1 skipped');
    expect(countsLine(run({ status: 'passed', assertionResults: [good, good] }))).toBe('2 passed, 0 failed');
  });

  it('counts a file that could not be read as one failed', () => {
    const file = { status: 'passed', assertionResults: [good] };
    expect(countsLine(run(file, { status: 'failed', assertionResults: [] }))).toBe('1 passed, 1 failed');
  });
});

describe('tests that did not run', () => {
  const result = run({ status: 'passed', assertionResults: [good, onPty, onMac, unsaid] });

  it('are listed with the reason why', () => {
    expect(judgedSkips(result, false)).toEqual({
      lines: [
        'skipped: serial over a pty (needs socat, which is not installed here) is heard: needs socat, which is not installed here',
        'skipped: a port (needs macOS) is listed: needs macOS',
        'skipped: the moon rises: no reason given',
      ],
      wrong: 0,
    });
  });

  it('are a failure where everything is installed, if they need a program or give no reason', () => {
    expect(judgedSkips(result, true).wrong).toBe(2);
    expect(judgedSkips(run({ status: 'passed', assertionResults: [good, onMac] }), true).wrong).toBe(0);
  });
});

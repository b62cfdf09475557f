// What a test run comes to: its counts, and the tests that did not run with the reason why.

/** Programs whose tests must have run where everything is meant to be installed. */
const mustHave = /\b(socat|tmux|ngspice|chromium|pty)\b/i;

const skipped = (result) =>
  result.testResults
    .flatMap((file) => file.assertionResults)
    .filter((test) => test.status !== 'passed' && test.status !== 'failed');

/** A reason stands in the name, as in "over a pty (needs socat, which is not installed here)". */
const reasonOf = (test) => /\((needs [^)]*)\)/.exec(test.fullName)?.[1];

/**
 * One line for each test that did not run. `wrong` counts those that make the run a failure: in continuous integration
 * everything is installed, so that a test that needed one of the programs, or gives no reason at all, must have run.
 */
export function judgedSkips(result, ci) {
  const tests = skipped(result);
  const wrong = ci
    ? tests.filter((test) => reasonOf(test) === undefined || mustHave.test(test.fullName))
    : [];
  const lines = tests.map((test) => `skipped: ${test.fullName}: ${reasonOf(test) ?? 'no reason given'}`);
  if (wrong.length > 0)
    lines.push(`CI=true: ${wrong.length} of the skipped tests must run here; this counts as a failure.`);
  return { lines, wrong: wrong.length };
}

/** "212 passed, 0 failed", and ", 3 skipped" where there were any. A file that could not be read as tests counts as one failed. */
export function countsLine(result) {
  const broken = result.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed'),
  ).length;
  const left = skipped(result).length;
  return `${result.numPassedTests} passed, ${result.numFailedTests + broken} failed${left > 0 ? `, ${left} skipped` : ''}`;
}

import { keepMemorySteady } from './engine.ts';
import { surveyBeside } from './survey-beside.ts';
import { toolVersion } from './version.ts';

/** Every command loads what it needs and no more; the version is answered before any of it. */
async function main(words: readonly string[]): Promise<void> {
  if (words.length === 1 && (words[0] === '--version' || words[0] === '-V')) {
    process.stdout.write(`${toolVersion()}\n`);
    return;
  }
  keepMemorySteady();
  if (words[0] === 'replay' && words[1] !== undefined) beginReplay(words[1]);
  const { runProgram } = await import('./program.ts');
  process.exitCode = await runProgram(words);
}

/** A long capture is gone through, and what judges it is loaded, while the command line is still being read. */
function beginReplay(session: string): void {
  surveyBeside(session);
  // Whoever needs it and finds it missing says so.
  import('./run-replay.ts').catch(() => {});
}

void main(process.argv.slice(2));

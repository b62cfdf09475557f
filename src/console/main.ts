import { keepMemorySteady } from './steady-memory.ts';
import { toolVersion } from './version.ts';

/** Every command loads what it needs and no more; the version is answered before any of it. */
async function main(words: readonly string[]): Promise<void> {
  if (words.length === 1 && (words[0] === '--version' || words[0] === '-V')) {
    process.stdout.write(`${toolVersion()}\n`);
    return;
  }
  keepMemorySteady();
  const { runProgram } = await import('./program.ts');
  process.exitCode = await runProgram(words);
}

await main(process.argv.slice(2));

import { Command } from 'commander';
import type { Run } from './flags.ts';

export const compareCommand = (done: Run): Command =>
  new Command('compare')
    .description('what changed between two sessions, and what that suggests; exits with 1 where they differ')
    .argument('<old>', 'the older session: its folder, or the file report --bundle made of it')
    .argument('<new>', 'the newer one')
    .option('--json', 'as one JSON object')
    .action(async (old: string, now: string, { json }: { json?: boolean }) => {
      const { comparedSessions } = await import('../run-compare.ts');
      done(comparedSessions(old, now, json === true));
    });

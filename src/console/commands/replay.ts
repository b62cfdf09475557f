import { Command } from 'commander';
import type { Run } from './flags.ts';

export const replayCommand = (done: Run): Command =>
  new Command('replay')
    .description('judge a saved session again from what was heard and answered')
    .argument('<session>', 'the session folder')
    .option('--json', 'the record as JSON, the very bytes of report.json')
    .action(async (folder: string, { json }: { json?: boolean }) => {
      const { replayed } = await import('../run-replay.ts');
      done(replayed(folder, json === true));
    });

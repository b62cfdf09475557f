import { Command } from 'commander';
import { gather } from '../options.ts';
import type { Run } from './flags.ts';

export const reportCommand = (done: Run): Command =>
  new Command('report')
    .description('render the report of a saved session again')
    .argument('<session>', 'the session folder')
    .option('--format <formats>', 'md, html, json, between commas; left out: all', gather, [])
    .option('--json', 'say what was written as JSON')
    .action(async (folder: string, flags: { format: readonly string[]; json?: boolean }) => {
      const { reported } = await import('../run-report.ts');
      reported(folder, flags.format, flags.json === true);
      done(0);
    });

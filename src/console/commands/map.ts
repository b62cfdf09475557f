import { Command } from 'commander';
import { showJson } from '../show.ts';
import type { Run } from './flags.ts';

export const mapCommand = (done: Run): Command =>
  new Command('map')
    .description("the machine's input map from its file and its last session")
    .argument('[session]', 'a session folder; left out: the last one under sessions')
    .option('--machine <file>', 'the machine file; left out: the copy in the session')
    .option('--json', 'as a JSON array')
    .action(async (session: string | undefined, flags: { machine?: string; json?: boolean }) => {
      const { mapOf } = await import('../run-map.ts');
      const { rows, text } = mapOf(session, flags.machine);
      if (flags.json) showJson(rows);
      else process.stdout.write(text);
      done(0);
    });

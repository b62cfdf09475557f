import { Command } from 'commander';
import type { Run } from './flags.ts';

interface MapFlags {
  readonly machine?: string;
  readonly format?: string;
  readonly json?: boolean;
}

export const mapCommand = (done: Run): Command =>
  new Command('map')
    .description("the machine's input map from its file and its last session")
    .argument(
      '[session]',
      'a session folder, or the file report --bundle made of it; left out: the last commissioning under sessions',
    )
    .option('--machine <file>', 'the machine file; left out: the copy in the session')
    .option('--format <format>', 'md, html, csv or json; left out: text for a terminal')
    .option('--json', 'the same as --format json')
    .action(async (session: string | undefined, flags: MapFlags) => {
      const { mapIn, mapOf } = await import('../run-map.ts');
      const page = mapOf(session, flags.machine);
      process.stdout.write(mapIn(flags.json ? 'json' : flags.format, page));
      done(0);
    });

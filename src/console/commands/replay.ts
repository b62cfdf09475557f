import { Command } from 'commander';
import type { Run } from './flags.ts';

interface ReplayFlags {
  readonly json?: boolean;
  readonly vcd?: string;
  readonly csv?: string;
}

export const replayCommand = (done: Run): Command =>
  new Command('replay')
    .description('judge a saved session again from what was heard and answered')
    .argument('<session>', 'the session folder, or the file report --bundle made of it')
    .option('--json', 'the record as JSON, the very bytes of report.json')
    .option(
      '--vcd <file>',
      'write what the inputs did as a value change dump (IEEE 1364), for a waveform viewer',
    )
    .option('--csv <file>', 'write every change of every input as CSV')
    .action(async (session: string, { json, ...files }: ReplayFlags) => {
      const [{ replayed }, { withSession }] = await Promise.all([
        import('../run-replay.ts'),
        import('../bundled.ts'),
      ]);
      done(withSession(session, (folder) => replayed(folder, { json: json === true, ...files })));
    });

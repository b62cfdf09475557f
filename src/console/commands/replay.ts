import { Command } from 'commander';
import { ToolError } from '../../model/tool-error.ts';
import { isBundle } from '../is-bundle.ts';
import { surveyBeside, surveyHere } from '../survey-beside.ts';
import type { Run } from './flags.ts';

interface ReplayFlags {
  readonly json?: boolean;
  readonly vcd?: string;
  readonly csv?: string;
  readonly stream?: string;
}

export const replayCommand = (done: Run): Command =>
  new Command('replay')
    .description('judge a saved session again from what was heard and answered')
    .argument('<session>', 'the session folder, the file report --bundle made of it, or a capture alone')
    .option('--json', 'the record as JSON, the very bytes of report.json')
    .option(
      '--vcd <file>',
      'write what the inputs did as a value change dump (IEEE 1364), for a waveform viewer',
    )
    .option('--csv <file>', 'write every change of every input as CSV')
    .option('--stream <file>', 'for a capture alone: the description of its stream')
    .action(async (session: string, { json, stream, ...files }: ReplayFlags) => {
      const beside = surveyBeside(session);
      try {
        const { bareCaptureAt } = await import('../bare-capture-at.ts');
        const bare = bareCaptureAt(session);
        if (!bare && stream !== undefined)
          throw new ToolError(
            'wrong-usage',
            'A session has its own stream description.',
            'Leave out --stream; it is for a capture without a session.',
          );
        const wishes = { json: json === true, ...files };
        if (bare) {
          const { showCapture } = await import('../replay-capture.ts');
          done(showCapture(bare, { ...wishes, ...(stream !== undefined && { stream }) }));
          return;
        }
        const { replayed } = await import('../run-replay.ts');
        const work = (folder: string) => replayed(folder, wishes, beside?.done ?? (() => surveyHere(folder)));
        if (!isBundle(session)) done(await work(session));
        else {
          const { withBundle } = await import('../../session/bundle.ts');
          done(await withBundle(session, work));
        }
      } finally {
        beside?.leave();
      }
    });

import { Command } from 'commander';
import { ToolError } from '../../model/tool-error.ts';
import { gather } from '../options.ts';
import type { ReportFlags, Run } from './flags.ts';

export const reportCommand = (done: Run): Command =>
  new Command('report')
    .description('render the report of a saved session again')
    .argument('<session>', 'the session folder, or the file --bundle made of it')
    .option(
      '--format <formats>',
      'md, html, json, csv, vcd, between commas; left out: md, html, json',
      gather,
    )
    .option('--out <folder>', 'where to write; left out: into the session folder, or beside the bundle')
    .option(
      '--bundle [file]',
      'pack the session into one file for someone far away; left out: beside the folder',
    )
    .option('--redact', 'with --bundle: leave out the names of machine, places and port, comments and paths')
    .option('--json', 'say what was written as JSON')
    .action(async (session: string, flags: ReportFlags) => {
      if (flags.redact === true && flags.bundle === undefined)
        throw new ToolError('wrong-usage', '--redact goes with --bundle.', 'Add --bundle.');
      const { bundled, reported, reportFolder } = await import('../run-report.ts');
      const { withSession } = await import('../bundled.ts');
      const json = flags.json === true;
      if (flags.bundle !== undefined) bundled(session, flags);
      else
        withSession(session, (folder) =>
          reported(folder, flags.format ?? [], json, flags.out ?? reportFolder(session)),
        );
      done(0);
    });

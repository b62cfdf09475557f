import { Command } from 'commander';
import type { CheckFlags, Run } from './flags.ts';

export const checkCommand = (done: Run): Command =>
  new Command('check')
    .description('validate a machine file; print a starter file or the schema')
    .argument('[file]', 'the machine file')
    .option('--new <kind>', 'print a commented file to begin with; kind: machine')
    .option('--schema <kind>', 'print the JSON Schema, for editors; kind: machine')
    .option('--stream', 'the file is a stream description')
    .option('--capture <file>', 'with --stream: which lines of this capture it reads')
    .option('--json', 'the problems as a JSON array')
    .action(async (file: string | undefined, flags: CheckFlags) => {
      const { checked } = await import('../run-check.ts');
      done(checked(file, flags));
    });

import { Command, Option } from 'commander';
import type { InlineFlags } from '../run-inline.ts';
import type { Run } from './flags.ts';

export const inlineCommand = (done: Run): Command =>
  new Command('inline')
    .description(
      "sit between a controller and the operator's own program, unchanged both ways, and keep what passes",
    )
    .option('--port <port>', "the controller's: device path or tcp://host:port")
    .option('--baud <rate>', 'bits a second of a serial port', '115200')
    .option(
      '--serve <where>',
      'what the program connects to: tcp://host:port, port 0 takes a free one, or pty',
      'tcp://127.0.0.1:0',
    )
    .option('--beside <where>', 'where others may listen, and only listen', 'tcp://127.0.0.1:0')
    .option(
      '--network',
      'allow an address that other computers reach: whoever reaches it commands the machine',
    )
    .option('--out <file>', 'the capture; left out: a new one under captures')
    .addOption(new Option('--own-line').hideHelp())
    .option('--json', 'what happens as JSON lines')
    .action(async (flags: InlineFlags) => {
      const { runInline } = await import('../run-inline.ts');
      await runInline(flags);
      done(0);
    });

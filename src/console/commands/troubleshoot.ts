import { Command } from 'commander';
import { faceNames, gather } from '../options.ts';
import type { Run, TroubleshootFlags } from './flags.ts';

const more = `
With --port it asks at the machine, one thing at a time, until the cause is
named, and tests again what was mended.
With --from alone it is far from the machine: it writes down what to ask next,
and what each answer would mean.`;

export const troubleshootCommand = (done: Run): Command =>
  new Command('troubleshoot')
    .description('why does this switch not do what it should: the next best test, until the cause is named')
    .argument('<input>', 'an input of the machine file, or input/switch where it has several')
    .option('--port <port>', 'device path, tcp://host:port, or bench for the simulated machine')
    .option('--from <session>', 'a session folder or bundle: begin from what it has shown')
    .option('--machine <file>', 'the machine file (YAML); left out: that of the session, or of the bench')
    .option('--machine-state <state>', 'fresh or worked; left out: worked where --from proved the input')
    .option('--stream <file>', 'a stream description; left out: the native status sentences')
    .option('--baud <rate>', 'bits a second of a serial port', '115200')
    .option('--operator <face>', `${faceNames.join(', ')}; left out: screen on a terminal, else lines`)
    .option('--out <folder>', 'the session folder; left out: a new one under sessions')
    .option('--resume', 'go on with the session in --out')
    .option('--fault <fault:input>', 'with --port bench: plant a fault; repeatable', gather)
    .option('--allow-request <hash>', 'you know the request of the stream description to be harmless')
    .option('--json', 'with --from alone: the list as JSON')
    .option('--no-color', 'no colour on the screen; NO_COLOR does the same')
    .addHelpText('after', more)
    .action(async (input: string, flags: TroubleshootFlags) => {
      const { runTroubleshoot } = await import('../run-troubleshoot.ts');
      done(await runTroubleshoot(input, flags));
    });

import { Command } from 'commander';
import { faceNames, gather } from '../options.ts';
import type { CommissionFlags, Run } from './flags.ts';

export const commissionCommand = (done: Run): Command =>
  new Command('commission')
    .description(
      'guided commissioning of the whole machine: asks, listens, judges, writes a session folder with the report',
    )
    .option('--port <port>', 'device path, tcp://host:port, or bench for the simulated machine')
    .option('--machine <file>', 'the machine file (YAML); left out: the one of the bench, or of the session')
    .option('--stream <file>', 'a stream description; left out: the native status sentences')
    .option('--baud <rate>', 'bits a second of a serial port', '115200')
    .option('--operator <face>', `${faceNames.join(', ')}; left out: screen on a terminal, else lines`)
    .option('--only <inputs>', 'only these inputs or switches, between commas; repeatable', gather)
    .option(
      '--checks <checks>',
      'only these checks, between commas; repeatable; left out: all but repeat and scale; all: every one',
      gather,
    )
    .option('--presses <count>', 'presses of each switch; left out: 3')
    .option('--rest <time>', 'how long the inputs are watched at rest; left out: 10s')
    .option('--cycles <count>', 'homings watched by the check repeat; left out: 10')
    .option('--program <file>', 'an RS-274 program that is to fit the machine (check envelope)')
    .option('--out <folder>', 'the session folder; left out: a new one under sessions')
    .option('--resume', 'go on with the session in --out')
    .option('--fault <fault:input>', 'with --port bench: plant a fault; repeatable', gather)
    .option('--allow-request <hash>', 'you know the request of the stream description to be harmless')
    .option(
      '--own-line',
      'while you are asked to move the machine you may send your controller a line that you type',
    )
    .option('--speak <shape>', 'with --port bench: the shape it reports in')
    .option('--no-color', 'no colour on the screen; NO_COLOR does the same')
    .action(async (flags: CommissionFlags) => {
      const { runCommission } = await import('../run-commission.ts');
      done(await runCommission(flags));
    });

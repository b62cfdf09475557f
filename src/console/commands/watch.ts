import { Command } from 'commander';
import { gather } from '../options.ts';
import type { WatchFlags } from '../run-watch.ts';
import type { Run } from './flags.ts';

export const watchCommand = (done: Run): Command =>
  new Command('watch')
    .description('live inputs and commanded positions; --soak counts false trips with nobody near')
    .option('--port <port>', 'device path, tcp://host:port, or bench for the simulated machine')
    .option('--stream <file>', 'a stream description; left out: the native status sentences')
    .option('--baud <rate>', 'bits a second of a serial port', '115200')
    .option('--operator <face>', 'screen, lines, json; left out: screen on a terminal, else lines')
    .option(
      '--soak <time>',
      'how long to count false trips, such as 10min or 8h; leaves with a verdict an input',
    )
    .option('--fault <fault:input>', 'with --port bench: plant a fault; repeatable', gather, [])
    .option('--allow-request <hash>', 'you know the request of the stream description to be harmless')
    .option('--speak <shape>', 'with --port bench: the shape it reports in')
    .option('--no-color', 'no colour on the screen; NO_COLOR does the same')
    .action(async (flags: WatchFlags) => {
      const { runWatch } = await import('../run-watch.ts');
      done(await runWatch(flags));
    });

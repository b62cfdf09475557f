import { Command } from 'commander';
import { faceNames } from '../options.ts';
import type { LearnFlags, Run } from './flags.ts';

export const learnCommand = (done: Run): Command =>
  new Command('learn')
    .description(
      'write a stream description by watching an unknown status stream: asks for rest, presses, small moves',
    )
    .option('--port <port>', 'device path, tcp://host:port, or bench for the simulated machine')
    .option('--machine <file>', 'the machine file (YAML); left out: the one of the bench')
    .option('--baud <rate>', 'bits a second of a serial port; left out: found by listening')
    .option('--operator <face>', `${faceNames.join(', ')}; left out: lines`)
    .option('--out <folder>', 'where stream.yaml and capture.log are written', 'learned')
    .option(
      '--request <bytes>',
      'what makes the controller report, if it must be asked; \\n, \\r, \\xNN are escapes',
    )
    .option('--every <time>', 'how often the request is written', '200ms')
    .option('--allow-request <hash>', 'you know these very bytes to be harmless')
    .option('--speak <shape>', 'with --port bench: the shape it reports in')
    .option('--no-color', 'no colour on the screen; NO_COLOR does the same')
    .action(async (flags: LearnFlags) => {
      const { runLearn } = await import('../run-learn.ts');
      done(await runLearn(flags));
    });

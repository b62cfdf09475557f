import { Command } from 'commander';
import { gather } from '../options.ts';
import type { Run } from '../program.ts';

export interface BenchFlags {
  readonly serve?: string;
  readonly fault: readonly string[];
  readonly faults?: boolean;
  readonly json?: boolean;
  readonly machine?: boolean;
}

export const benchCommand = (done: Run): Command =>
  new Command('bench')
    .description(
      'serve the simulated machine in real time; its hands are moved by JSON lines on standard input',
    )
    .option('--serve <where>', 'pty, or tcp://127.0.0.1:0')
    .option('--fault <fault:input>', 'plant a fault; repeatable', gather, [])
    .option('--faults', 'list the faults it knows')
    .option('--machine', 'print its machine file')
    .option('--json', 'with --faults: as a JSON array')
    .action(async (flags: BenchFlags) => {
      const { runBench } = await import('../bench-wiring.ts');
      done(await runBench(flags));
    });

import { Command } from 'commander';
import { ToolError } from '../../model/tool-error.ts';
import { gather } from '../options.ts';
import { showJson, showLines, showPage } from '../show.ts';
import type { BenchFlags, Run } from './flags.ts';

export const benchCommand = (done: Run): Command =>
  new Command('bench')
    .description('serve the simulated machine in real time; JSON lines on standard input move its hands')
    .option('--serve <where>', 'pty, or tcp://host:port; port 0 takes a free one', 'tcp://127.0.0.1:0')
    .option('--fault <fault:input>', 'plant a fault; repeatable', gather)
    .option('--faults', 'list the faults it knows')
    .option('--print-machine', 'print its machine file: with --fault, of the machine it is planted on')
    .option('--speak <shape>', 'report in an invented shape instead of native sentences')
    .option('--shapes', 'list the shapes')
    .option('--json', 'with --faults: as a JSON array')
    .action(async (flags: BenchFlags) => {
      if (flags.faults) await showFaults(flags.json === true);
      else if (flags.shapes) await showShapes();
      else if (flags.printMachine) await printMachine(flags.fault ?? []);
      else if (flags.json)
        throw new ToolError(
          'wrong-usage',
          '--json goes with --faults.',
          'A served bench speaks JSON anyway.',
        );
      else await serve(flags);
      done(0);
    });

async function showFaults(json: boolean): Promise<void> {
  const { faultList } = await import('../../bench/faults.ts');
  if (json) showJson(faultList);
  else showPage(faultList.flatMap(({ usage, description }) => [`${usage}:`, `    ${description}`]));
}

async function showShapes(): Promise<void> {
  const { namedShapes } = await import('../../bench/speaking/shapes.ts');
  showLines(Object.keys(namedShapes));
}

async function printMachine(faults: readonly string[]): Promise<void> {
  const { machineFor } = await import('../../bench/machines.ts');
  process.stdout.write(machineFor(faults).file);
}

/** Serves until the program is told to end or nobody reads its answers any more. */
async function serve({ serve: where, fault = [], speak }: BenchFlags): Promise<void> {
  const [{ Bench }, { pacedTime }, { serveBench }, { spoken }, { realTime }] = await Promise.all([
    import('../../bench/bench.ts'),
    import('../../bench/paced-time.ts'),
    import('../../bench/serve.ts'),
    import('../../bench/speaking/named.ts'),
    import('../../transport/real-time.ts'),
  ]);
  const bench = new Bench(pacedTime(realTime), { faults: fault, ...spoken(speak) });
  const { stdin, stdout } = process;
  const serving = await serveBench({ serve: where, bench, time: realTime, stdin, stdout }).catch((cause) => {
    // A bench that cannot be served must not go on ticking.
    bench.shutDown();
    throw cause;
  });
  await new Promise<void>((end) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => end());
    stdout.once('error', () => end());
  });
  await serving.close();
  stdin.destroy();
}

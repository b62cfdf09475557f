import { Command, CommanderError } from 'commander';
import { asTyped } from './as-typed.ts';
import { benchCommand } from './commands/bench.ts';
import { checkCommand } from './commands/check.ts';
import { commissionCommand } from './commands/commission.ts';
import { compareCommand } from './commands/compare.ts';
import { explainCommand } from './commands/explain.ts';
import { inlineCommand } from './commands/inline.ts';
import { learnCommand } from './commands/learn.ts';
import { mapCommand } from './commands/map.ts';
import { portsCommand } from './commands/ports.ts';
import { replayCommand } from './commands/replay.ts';
import { reportCommand } from './commands/report.ts';
import { troubleshootCommand } from './commands/troubleshoot.ts';
import { watchCommand } from './commands/watch.ts';
import { wiringCommand } from './commands/wiring.ts';
import { failureText, toolFailed } from './failure.ts';
import { toolVersion } from './version.ts';

const commands = [
  commissionCommand,
  troubleshootCommand,
  mapCommand,
  wiringCommand,
  watchCommand,
  inlineCommand,
  replayCommand,
  compareCommand,
  reportCommand,
  learnCommand,
  benchCommand,
  checkCommand,
  explainCommand,
  portsCommand,
];

const about = `Guided commissioning of the home, limit, probe, door and stop inputs of a small CNC machine.
It listens to the controller's status stream, asks you to press and unplug one thing at a time, and writes a report.
It commands no motion, cannot stop the machine and is no safety function.`;

const exits = `
Exit codes:
  0  all that was asked for was shown
  1  a fault or a limitation was found
  2  evidence is missing, or it was stopped: --resume goes on
  3  wrong usage, or the tool itself failed`;

/** Runs one command line to its end and gives the exit code. Never throws. */
export async function runProgram(words: readonly string[]): Promise<number> {
  let code = 0;
  const program = new Command('tellwire')
    .description(about)
    .version(toolVersion(), '-V, --version')
    .addHelpText('after', exits)
    .showSuggestionAfterError(true)
    .exitOverride()
    .configureOutput({ outputError: () => {} });
  for (const make of commands)
    program.addCommand(
      settled(
        make((given) => (code = given)),
        program,
      ),
    );
  for (const stream of [process.stdout, process.stderr])
    if (stream.listenerCount('error') === 0) stream.on('error', () => {});
  try {
    if (words.length === 0) {
      process.stderr.write(program.helpInformation());
      return toolFailed;
    }
    await program.parseAsync([...words], { from: 'user' });
    return code;
  } catch (cause) {
    if (!(cause instanceof CommanderError)) process.stderr.write(failureText(cause));
    else if (cause.exitCode === 0) return 0;
    else process.stderr.write(`${usageText(cause.message)}\n`);
    return toolFailed;
  }
}

const settled = (command: Command, parent: Command): Command =>
  command.copyInheritedSettings(parent).allowExcessArguments(false);

const usageText = (message: string): string =>
  `tellwire: ${message.replace(/^error: /, '').replaceAll('\n', ' ')}\n  ${asTyped('Try: tellwire --help, or tellwire <command> --help.')}`;

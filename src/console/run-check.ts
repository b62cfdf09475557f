import { machineSchema } from '../model/machine-file/json-schema.ts';
import { readMachineFile } from '../model/machine-file/read.ts';
import { starterFile } from '../model/machine-file/starter.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { counted } from '../words/figures.ts';
import type { CheckFlags } from './commands/flags.ts';
import { problemBlocks } from './problem-blocks.ts';
import { textOfFile } from './read-machine.ts';
import { checkedStream } from './run-check-stream.ts';
import { showJson, showLines } from './show.ts';

/** 0 the file is right, or was printed; 1 the file is wrong. */
export function checked(file: string | undefined, flags: CheckFlags): 0 | 1 {
  const wishes = [file, flags.new, flags.schema].filter((each) => each !== undefined).length;
  if (wishes !== 1) {
    throw new ToolError(
      'wrong-usage',
      wishes === 0 ? 'Nothing was named to check.' : 'One thing at a time.',
      'Name a machine file, or --new machine, or --schema machine.',
    );
  }
  if (file !== undefined && flags.stream) return checkedStream(file, flags.capture, flags.json === true);
  if (file !== undefined) return checkedFile(file, flags.json === true);
  machineOnly(flags.new ?? flags.schema ?? '');
  if (flags.schema === undefined) process.stdout.write(starterFile());
  else showJson(machineSchema);
  return 0;
}

function checkedFile(file: string, json: boolean): 0 | 1 {
  const { machine, problems = [], doubts = [] } = readMachineFile(textOfFile(file));
  if (json) showJson(problems);
  else if (machine) {
    const holds = `${machine.name}, ${counted(machine.inputs.length, 'input')}, ${counted(machine.axes.length, 'axis', 'axes')}.`;
    showLines([`${file} is right: ${holds}`]);
    if (doubts.length > 0)
      process.stdout.write(
        `\nIt can be used as it stands, but look at this:\n\n${problemBlocks(doubts, file)}`,
      );
  } else process.stdout.write(problemBlocks(problems, file));
  return machine ? 0 : 1;
}

function machineOnly(kind: string): void {
  if (kind === 'machine') return;
  throw new ToolError('wrong-usage', `${visible(kind)} is no kind of file here.`, 'Write machine.');
}

import { parseArgs } from 'node:util';
import { ToolError } from '../model/tool-error.ts';
import { keepMemorySteady } from './engine.ts';
import { failureText, toolFailed } from './failure.ts';
import { runDemo } from './run-demo.ts';

const allowed =
  'After `npm start --` you can write --hands-on (you press the keys), --out <folder>, --fault <name> (in place of the faults that are planted; again for more), --no-color.';

function wished() {
  try {
    return parseArgs({
      options: {
        'hands-on': { type: 'boolean', default: false },
        out: { type: 'string' },
        fault: { type: 'string', multiple: true },
        'no-color': { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    }).values;
  } catch (cause) {
    const [found = ''] = (cause instanceof Error ? cause.message : String(cause)).split('. ');
    throw new ToolError('wrong-usage', `${found}.`, allowed, cause);
  }
}

/** What `npm start` runs: the built-in bench, commissioned from beginning to end. */
async function main(): Promise<void> {
  keepMemorySteady();
  try {
    const { help, out, fault, ...values } = wished();
    if (help) {
      process.stdout.write(`${allowed}\n`);
      return;
    }
    process.exitCode = await runDemo({
      handsOn: values['hands-on'],
      out,
      faults: fault,
      color: !values['no-color'],
    });
  } catch (cause) {
    process.stderr.write(failureText(cause));
    process.exitCode = toolFailed;
  }
}

await main();

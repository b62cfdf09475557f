import { parseArgs } from 'node:util';
import { keepMemorySteady } from './engine.ts';
import { failureText, toolFailed } from './failure.ts';
import { runDemo } from './run-demo.ts';

/** What `npm start` runs: the built-in bench, commissioned from beginning to end. */
async function main(): Promise<void> {
  keepMemorySteady();
  try {
    const { values } = parseArgs({
      options: {
        'hands-on': { type: 'boolean', default: false },
        out: { type: 'string' },
        fault: { type: 'string', multiple: true },
        'no-color': { type: 'boolean', default: false },
      },
    });
    process.exitCode = await runDemo({
      handsOn: values['hands-on'],
      out: values.out,
      faults: values.fault,
      color: !values['no-color'],
    });
  } catch (cause) {
    process.stderr.write(failureText(cause));
    process.exitCode = toolFailed;
  }
}

await main();

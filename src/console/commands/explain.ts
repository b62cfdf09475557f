import { Command } from 'commander';
import { findingKinds } from '../../model/finding.ts';
import { ToolError } from '../../model/tool-error.ts';
import { visible } from '../../model/visible.ts';
import { showJson } from '../show.ts';
import type { Run } from './flags.ts';

export const explainCommand = (done: Run): Command =>
  new Command('explain')
    .description('say what a finding means and what to do next')
    .argument('<finding>', 'as a verdict names it, such as break-undetected')
    .option('--json', 'as one JSON object')
    .action(async (name: string, { json }: { json?: boolean }) => {
      const kind = findingKinds.find((each) => each === name);
      if (!kind) {
        throw new ToolError(
          'wrong-usage',
          `There is no finding ${visible(name)}.`,
          `One of: ${findingKinds.join(', ')}.`,
        );
      }
      const { explained, explainPage } = await import('../../words/explain.ts');
      if (json) showJson(explained(kind));
      else process.stdout.write(explainPage(kind));
      done(0);
    });

import { Command } from 'commander';
import { findingKinds } from '../../model/finding.ts';
import { ToolError } from '../../model/tool-error.ts';
import { visible } from '../../model/visible.ts';
import { showJson, showPage } from '../show.ts';
import type { Run } from './flags.ts';

export const explainCommand = (done: Run): Command =>
  new Command('explain')
    .description('say what a finding, a result or a possible cause means and what to do next')
    .argument(
      '<finding...>',
      'as it is printed or named: break-undetected, A broken wire goes unnoticed, Inconclusive',
    )
    .option('--json', 'as one JSON object; a list of them where a title stands for several causes')
    .action(async (words: readonly string[], { json }: { json?: boolean }) => {
      const { namesNear, termsNamed } = await import('../../words/terms.ts');
      const typed = words.join(' ');
      const found = termsNamed(typed);
      const [first] = found;
      if (first === undefined) throw unknown(typed, namesNear(typed));
      if (json) showJson(found.length === 1 ? first.json : found.map((each) => each.json));
      else showPage(found.flatMap(({ page }) => page.split('\n')).slice(0, -1));
      done(0);
    });

const unknown = (typed: string, near: string): ToolError =>
  new ToolError(
    'wrong-usage',
    `There is no finding ${visible(typed)}.`,
    near === '' ? `One of: ${findingKinds.join(', ')}.` : near,
  );

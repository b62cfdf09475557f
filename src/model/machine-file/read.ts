import type { Machine } from '../machine.ts';
import { machineOf } from './build.ts';
import { sayContradictions } from './consistency.ts';
import { sayDoubts } from './doubts.ts';
import { sayWrongNames } from './names.ts';
import { partsOf } from './parts.ts';
import { type FileProblem, pathText, type Wrong } from './problem.ts';
import { type Syntax, syntaxOf } from './syntax.ts';
import { offsetOf } from './tree.ts';

export type ReadMachine =
  | {
      readonly machine: Machine;
      /** What is right as it stands, but hardly what is meant. */
      readonly doubts: readonly FileProblem[];
      readonly problems?: never;
    }
  | {
      readonly problems: readonly [FileProblem, ...FileProblem[]];
      readonly machine?: never;
      readonly doubts?: never;
    };

/** Nobody reads more; a file with more is no machine file. */
const mostProblems = 500;

/** Reads a machine file (YAML 1.2). Never throws: the machine, or everything that is wrong with the file, in the order of its lines. */
export function readMachineFile(text: string): ReadMachine {
  const said: Wrong[] = [];
  const syntax = syntaxOf(text, (wrong) => said.push(wrong));
  // What follows a syntax error is guesswork; what stands before it is judged all the same.
  const after: Wrong[] = [];
  const parts = partsOf(syntax.tree, (wrong) => after.push(wrong));
  sayWrongNames(parts, (wrong) => after.push(wrong));
  sayContradictions(parts, (wrong) => after.push(wrong));
  const broken = syntax.brokenAt;
  // A value refused as a whole is not also missing.
  const refused = new Set(said.map((wrong) => pathText(wrong.path)));
  const certain = after.filter((wrong) => {
    if (wrong.found !== 'nothing') return broken === undefined || placeOf(wrong, syntax) < broken;
    return broken === undefined && !refused.has(pathText(wrong.path));
  });
  const problems = inOrder([...said, ...certain], syntax);
  const [first, ...more] = problems;
  if (first !== undefined) return { problems: [first, ...more] };
  const doubts: Wrong[] = [];
  sayDoubts(parts, (doubt) => doubts.push(doubt));
  return { machine: machineOf(parts), doubts: inOrder(doubts, syntax) };
}

const placeOf = (wrong: Wrong, { tree }: Syntax): number => wrong.offset ?? offsetOf(tree, wrong.path);

function inOrder(wrongs: readonly Wrong[], syntax: Syntax): readonly FileProblem[] {
  const placed = wrongs.map((wrong) => ({ wrong, at: placeOf(wrong, syntax) })).sort((a, b) => a.at - b.at);
  const shown = placed.slice(0, mostProblems).map(({ wrong, at }) => {
    const { line, col } = syntax.lines.linePos(at);
    const { path, found, allowed, tryNext } = wrong;
    return {
      line: Math.max(1, line),
      column: Math.max(1, col),
      path: pathText(path),
      found,
      allowed,
      tryNext,
    };
  });
  const last = shown.at(-1);
  const more = placed.length - shown.length;
  return last === undefined || more === 0
    ? shown
    : [
        ...shown,
        {
          ...last,
          path: '',
          found: `${more} more problems`,
          allowed: 'none',
          tryNext: 'begin with a starter file',
        },
      ];
}

import type { FileProblem } from '../model/machine-file/problem.ts';
import { ToolError } from '../model/tool-error.ts';

/** A file that a person named cannot be used: every problem of it at once, each with its place. */
export class FileWrong extends ToolError {
  readonly problems: readonly FileProblem[];
  readonly file: string;

  /** `what`: "machine file". `command`: what checks it alone, once it is mended. */
  constructor(what: string, problems: readonly FileProblem[], file: string, command: string) {
    super(
      'file-wrong',
      `The ${what} cannot be used as it stands:`,
      `Mend it; \`${command}\` says when it is right.`,
    );
    this.problems = problems;
    this.file = file;
  }
}

/** What went wrong with the tool's own work. Findings are for the machine; these are for the tool, and leave with exit code 3. */
export type ToolErrorCode =
  | 'wrong-usage'
  | 'port-missing'
  | 'port-busy'
  | 'port-not-permitted'
  | 'port-failed'
  | 'nothing-heard'
  | 'file-missing'
  | 'file-wrong'
  | 'folder-not-empty'
  | 'session-differs'
  | 'session-damaged'
  | 'program-missing'
  | 'internal';

/** Says what was found, what is allowed, what to try. */
export class ToolError extends Error {
  readonly code: ToolErrorCode;
  readonly tryNext: string;

  constructor(code: ToolErrorCode, found: string, tryNext: string, cause?: unknown) {
    super(found, { cause });
    this.name = 'ToolError';
    this.code = code;
    this.tryNext = tryNext;
  }
}

/** A command hands back the exit code of the program. */
export type Run = (code: number) => void;

/** Flags as commander hands them over: texts, not yet looked at. */
export interface CommissionFlags {
  readonly port?: string;
  readonly machine?: string;
  readonly stream?: string;
  readonly baud: string;
  readonly operator?: string;
  readonly only?: readonly string[];
  readonly checks?: readonly string[];
  readonly presses?: string;
  readonly rest?: string;
  readonly cycles?: string;
  readonly program?: string;
  readonly out?: string;
  readonly resume?: boolean;
  readonly ownLine?: boolean;
  readonly allowRequest?: string;
  readonly speak?: string;
  readonly fault?: readonly string[];
  readonly color: boolean;
}

export interface TroubleshootFlags extends CommissionFlags {
  readonly from?: string;
  readonly machineState?: string;
  readonly json?: boolean;
}

export interface LearnFlags {
  readonly port?: string;
  readonly machine?: string;
  readonly baud?: string;
  readonly operator?: string;
  readonly out: string;
  readonly request?: string;
  readonly every: string;
  readonly allowRequest?: string;
  readonly speak?: string;
  readonly color: boolean;
}

export interface CheckFlags {
  readonly stream?: boolean;
  readonly capture?: string;
  readonly new?: string;
  readonly schema?: string;
  readonly json?: boolean;
}

export interface BenchFlags {
  readonly speak?: string;
  readonly shapes?: boolean;
  readonly serve: string;
  readonly fault?: readonly string[];
  readonly faults?: boolean;
  readonly printMachine?: boolean;
  readonly json?: boolean;
}

export interface ReportFlags {
  readonly format?: readonly string[];
  readonly out?: string;
  readonly bundle?: string | true;
  readonly redact?: boolean;
  readonly json?: boolean;
}

import type { FindingKind } from '../model/finding.ts';
import type { CheckName, Status, Verdict } from '../model/verdict.ts';

export interface Expected {
  readonly check: CheckName;
  readonly subject: string;
  readonly status: Status;
  readonly kinds: readonly FindingKind[];
}

export interface Comparison {
  readonly equal: boolean;
  readonly lines: readonly string[];
}

/** What was found beside what the planted faults must give: the same set of verdicts, statuses and kinds, nothing more and nothing less. */
export function compared(found: readonly Verdict[], expected: readonly Expected[]): Comparison {
  const is = new Map(
    found.map((each) => [keyOf(each), saidOf({ ...each, kinds: each.findings.map(({ kind }) => kind) })]),
  );
  const must = new Map(expected.map((each) => [keyOf(each), saidOf(each)]));
  const keys = [...new Set([...must.keys(), ...is.keys()])];
  const unlike = keys.filter((key) => is.get(key) !== must.get(key));
  const wrong = (said: string | undefined): boolean => said !== undefined && said !== saidOf(sound);
  const planted = keys.filter((key) => wrong(must.get(key)) && !unlike.includes(key));
  return {
    equal: unlike.length === 0 && found.length === is.size,
    lines: [
      ...planted.map((key) => `  as planted: ${key}: ${is.get(key)}`),
      ...unlike.map(
        (key) =>
          `  UNLIKE:     ${key}: found ${is.get(key) ?? 'nothing'}, must be ${must.get(key) ?? 'nothing'}`,
      ),
      `  ${keys.length - unlike.length} of ${keys.length} verdicts are as planted${unlike.length === 0 ? '; nothing more was found and nothing less.' : '.'}`,
    ],
  };
}

const sound = { status: 'proved', kinds: [] } as const;

const keyOf = ({ check, subject }: { readonly check: string; readonly subject: string }): string =>
  `${check} ${subject}`;

const saidOf = ({ status, kinds }: { readonly status: Status; readonly kinds: readonly string[] }): string =>
  [status, ...kinds.toSorted()].join(' ');

import type { Finding } from '../../model/finding.ts';
import type { InputName, Subject, Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { Facts, Missing, Verdict } from '../../model/verdict.ts';
import type { State } from '../signal/track.ts';
import type { RestCheck } from './press-evidence.ts';
import { contactOf, type ReadRow, readRow, rowTable } from './row.ts';
import type { RowEvidence } from './row-evidence.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** What became of the row of one switch: it was made, its plug hangs out from before, or no hand went to it. */
export type OpenWireEvidence = { readonly subject: Subject } & (
  | { readonly came: 'row'; readonly rest: RestCheck; readonly row: RowEvidence }
  | { readonly came: 'left-out'; readonly row: RowEvidence }
  | { readonly came: 'flickers' }
  | { readonly came: 'to-nothing'; readonly missing: Missing }
);

export const rowOf = (item: OpenWireEvidence): RowEvidence | undefined =>
  item.came === 'row' || item.came === 'left-out' ? item.row : undefined;

/** The judge of one row of unplug, control press, replug and press. */
export function judgeRow(item: OpenWireEvidence, pressed: Switch, scene: Scene): Verdict {
  const { subject } = item;
  const of = { check: 'open-wire', subject } as const;
  const input = targetOf(rowOf(item), pressed, scene);
  if (item.came === 'flickers')
    return {
      ...withoutEvidence(of, 'rest-in-doubt'),
      status: 'failed',
      evidence: 'edge',
      missing: [],
      findings: [{ kind: 'flickers', input }],
    };
  if (item.came === 'to-nothing')
    return withoutEvidence(
      of,
      item.missing,
      item.missing === 'chain-open' ? { findings: [chainBlocked(pressed, scene)] } : {},
    );
  const { row } = item;
  const elsewhere: readonly Finding[] =
    input === pressed.input ? [] : [{ kind: 'answers-elsewhere', input: pressed.input, answeredBy: input }];
  const facts = factsOf(row, input, pressed);
  const without = (missing: Missing, findings: readonly Finding[] = []) =>
    withoutEvidence(of, missing, { evidence: evidenceOf(row), facts, traces: row.traces, findings });
  if (row.stillOut)
    return without(row.missing ?? 'replug', [{ kind: 'still-out', what: [{ subject, at: row.at }] }]);
  if (row.missing) return without(row.missing, row.wrongPlugs > 0 ? [{ kind: 'wrong-plug', input }] : []);
  const levels = row.inputs.get(input);
  if (!levels?.rest) return without('input-not-reported', [{ kind: 'input-not-in-stream', input }]);
  const { rest, out } = levels;
  if (out.kind === 'unknown') return without('settled-level');
  if (!row.after) return without('press-after-replug');
  const failed = (findings: readonly Finding[]): Verdict => ({
    ...of,
    status: statusOf(findings),
    evidence: evidenceOf(row),
    findings,
    missing: [],
    facts,
    traces: row.traces,
  });
  if (out.kind === 'flickers')
    return failed([...elsewhere, { kind: 'floats-open', input, edges: out.edges }]);
  const move = row.after.moved.find((each) => each.input === input);
  if (!move && !row.after.confirmed) return without('no-answer-given');
  if (move?.levelOnly) return failed([...elsewhere, { kind: 'not-enabled', input }]);
  const read = readRow(rest, move?.away ?? rest, out.state);
  if (!read) return without('settled-level');
  if (item.came === 'row' && item.rest === 'in-doubt' && rest.active === '1')
    return { ...without('rest-in-doubt', elsewhere), facts: { ...facts, row: bits(read) } };
  return judgeBits(
    read,
    { ...failed([]), facts: { ...facts, row: bits(read), ...contactFound(read) } },
    elsewhere,
    input,
    pressed,
  );
}

const bits = ({ row, by }: ReadRow) => ({ bits: row, by });

function contactFound({ row }: ReadRow): Pick<Facts, 'contactFound'> {
  const found = contactOf(row);
  return found ? { contactFound: found } : {};
}

function judgeBits(
  { row, by }: ReadRow,
  verdict: Verdict,
  elsewhere: readonly Finding[],
  input: InputName,
  pressed: Switch,
): Verdict {
  const { kinds, status } = rowTable[row];
  const own = kinds.map(
    (kind): Finding => (kind === 'break-undetected' ? { kind, input, breaks: [] } : { kind, input }),
  );
  const polarity: readonly Finding[] =
    by === 'change' && contactOf(row) ? [{ kind: 'polarity-unknown', input }] : [];
  const found = contactOf(row);
  const otherwise: readonly Finding[] =
    found && pressed.contact !== 'unknown' && found !== pressed.contact
      ? [{ kind: 'declared-otherwise', declared: pressed.contact, found }]
      : [];
  const findings = [...elsewhere, ...own, ...polarity, ...otherwise];
  const mustNotice = pressed.duty.includes('stop') || pressed.duty.includes('door');
  const unnoticed = kinds.some((kind) => kind === 'break-undetected');
  if (status === 'inconclusive') return { ...verdict, status, findings, missing: ['never-answered'] };
  return { ...verdict, status: mustNotice && unnoticed ? 'failed' : statusOf(findings), findings };
}

/** The input to judge: the one that answered the presses; without earlier presses, the one that answers after the plug is back. */
function targetOf(row: RowEvidence | undefined, { subject, input }: Switch, scene: Scene): InputName {
  const known = scene.known.answering[subject];
  if (known) return known;
  const movers = row?.after?.moved.map((each) => each.input) ?? [];
  return movers.includes(input) ? input : (movers[0] ?? input);
}

const evidenceOf = (row: RowEvidence): Verdict['evidence'] => {
  if (row.after && row.after.moved.length > 0) return 'edge';
  const changed = [...row.inputs.values()].some(
    ({ rest, out }) => rest && out.kind === 'holds' && differs(rest, out.state),
  );
  return changed ? 'edge' : 'told';
};

const differs = (a: State, b: State): boolean => a.level !== b.level || a.active !== b.active;

function factsOf(row: RowEvidence, input: InputName, pressed: Switch): Facts {
  const halted = row.control?.halted || row.after?.halted;
  return {
    ...(row.resolution && { resolution: row.resolution }),
    unpluggedAt: row.at,
    ...(input !== pressed.input && { answeredBy: input }),
    ...(halted && { controllerActed: true }),
  };
}

function chainBlocked({ input, subject }: Switch, { machine }: Scene): Finding {
  const others =
    machine.inputs
      .find((each) => each.name === input)
      ?.switches.map((each) => each.subject)
      .filter((each) => each !== subject) ?? [];
  return { kind: 'chain-blocked', input, others };
}

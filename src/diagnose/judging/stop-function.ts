import type { Answer } from '../../model/ask.ts';
import type { Finding } from '../../model/finding.ts';
import type { InputName, Subject } from '../../model/machine.ts';
import type { Missing, Trace, Verdict } from '../../model/verdict.ts';
import type { Excursion } from '../signal/excursion.ts';
import { polarityOf } from './press-findings.ts';
import { statusOf, withoutEvidence } from './status.ts';

/** What one stop showed, or what kept it from being shown. */
export type StopEvidence = StopShown | { readonly subject: Subject; readonly missing: Missing };

interface StopShown {
  readonly subject: Subject;
  /** The input declared for it, and the one that answers its presses. */
  readonly input: InputName;
  readonly target: InputName;
  /** The target changes by itself: no change of it is an answer. */
  readonly flickers: boolean;
  /** How the target moved with the button. */
  readonly move: Excursion | undefined;
  /** The button stayed in until it was let out; undefined: nobody could say. */
  readonly latches: boolean | undefined;
  /** What showed the person that the drives lost power. */
  readonly power: Answer | undefined;
  readonly restarted: boolean | undefined;
  /** The input went back to rest when the button was let out; undefined: not known. */
  readonly returned: boolean | undefined;
  readonly traces: readonly Trace[];
}

const shown = ['knob-free', 'lamp', 'meter'] as const;

/** Status and function are two questions; the verdict is no stronger than what the person saw of the power, so its evidence is told. */
export function judgeStop(evidence: StopEvidence): Verdict {
  const of = { check: 'stop', subject: evidence.subject } as const;
  if ('missing' in evidence) return withoutEvidence(of, evidence.missing);
  const { power, restarted, traces } = evidence;
  const findings: Finding[] = [...statusFindings(evidence)];
  if (power === 'did-not') findings.push({ kind: 'power-stays-on' });
  if (evidence.latches === false) findings.push({ kind: 'does-not-latch' });
  if (restarted) findings.push({ kind: 'restarts' });
  const powerShownBy = shown.find((each) => each === power);
  const facts = powerShownBy ? { powerShownBy } : {};
  const verdict: Verdict = {
    ...of,
    status: statusOf(findings),
    evidence: 'told',
    findings,
    missing: [],
    facts,
    traces,
  };
  if (verdict.status === 'failed') return verdict;
  if (!powerShownBy) return { ...verdict, status: 'inconclusive', missing: ['power-not-looked-at'] };
  if (evidence.latches === undefined || restarted === undefined)
    return { ...verdict, status: 'inconclusive', missing: ['not-confirmed'] };
  return verdict;
}

/** A status follows where its own input goes active with the button and back with it; another input, or the other way round, tells the controller something else. */
function statusFindings({ input, target, flickers, move, returned }: StopShown): readonly Finding[] {
  if (flickers) return [{ kind: 'flickers', input: target }];
  if (!move || returned === false) return [{ kind: 'status-not-following', input: target }];
  const elsewhere: readonly Finding[] =
    target === input ? [] : [{ kind: 'answers-elsewhere', input, answeredBy: target }];
  return [...elsewhere, ...polarityOf([move], target)];
}

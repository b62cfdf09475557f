import type { SearchOrder } from '../../model/cause-facts.ts';
import { knownOnly } from '../../model/known-only.ts';
import { type Machine, type Switch, switchOf } from '../../model/machine.ts';
import {
  besides,
  type Glimpse,
  jumps,
  type Outcome,
  type Push,
  stays,
  still,
  to,
} from '../../model/outcomes.ts';
import type { Trace, Verdict } from '../../model/verdict.ts';
import type { State } from '../signal/track.ts';
import { candidatesOf } from './candidates.ts';
import { glimpsed, type Site, toldBy } from './site.ts';

type Evidence = SearchOrder['earlier'];
type Eyes = Pick<Site, 'told' | 'wiring'>;

/**
 * What an earlier session shows of one switch: whether it proved it, and with it that the machine worked; else what was seen of its
 * trouble. Of a search, all that it learnt; of a commissioning, the rest, the press and the unplugged level. Nothing where it told nothing.
 */
export function earlierEvidence(
  verdicts: readonly Verdict[],
  machine: Machine,
  subject: string,
): Pick<SearchOrder, 'history' | 'earlier' | 'stopProved' | 'beside' | 'told'> {
  const of = switchOf(machine, subject);
  const verdictOn = (check: Verdict['check']) =>
    verdicts.find((each) => each.check === check && each.subject === subject);
  const works = (['press', 'open-wire'] as const).every((check) => {
    const status = verdictOn(check)?.status;
    return status === 'proved' || status === 'limited';
  });
  const stopProved = verdicts.some(({ check, status }) => check === 'stop' && status === 'proved');
  if (works) return { history: 'worked', stopProved, earlier: [] };
  const searched = verdictOn('troubleshoot')?.facts.cause;
  if (searched)
    return {
      history: searched.history,
      stopProved,
      earlier: searched.evidence.map(({ deed, outcome }) => ({ deed, outcome })),
      ...knownOnly({ beside: searched.beside, told: searched.told }),
    };
  const state = of && firstSeen(of, verdicts);
  return {
    history: 'fresh',
    stopProved,
    earlier: of ? seenOf(of, verdicts, machine) : [],
    ...knownOnly({ beside: verdictOn('press')?.facts.answeredBy, told: state && toldBy(state) }),
  };
}

const restOf = (of: Switch, verdicts: readonly Verdict[]) =>
  verdicts.find(({ check, subject }) => check === 'rest' && subject === of.input)?.facts.rest;

/** What the input was before anything was done to it, as far as the checks saw it. */
export const firstSeen = (of: Switch, verdicts: readonly Verdict[]): State | undefined =>
  restOf(of, verdicts) ??
  firstState(
    verdicts.find(({ check, subject }) => check === 'press' && subject === of.subject)?.traces[0],
    of.input,
  );

/** What the checks of a commissioning saw of one switch, told as a search for a cause would tell it. */
export function seenOf(of: Switch, verdicts: readonly Verdict[], machine: Machine): Evidence {
  const rest = restOf(of, verdicts);
  const press = verdicts.find(({ check, subject }) => check === 'press' && subject === of.subject);
  const wire = verdicts.find(({ check, subject }) => check === 'open-wire' && subject === of.subject);
  const state = firstSeen(of, verdicts);
  if (!state) return [];
  const eyes: Eyes = { told: toldBy(state), wiring: candidatesOf(machine, of).wirings[0] };
  return [
    ...(rest ? one('rest', rest.edges >= 2 ? jumps : glimpsed(rest, eyes)) : []),
    ...(press ? one('press', pressedAs(press, of, eyes)) : []),
    ...(wire ? one(`unplug-${wire.facts.unpluggedAt ?? 'switch'}`, outAs(wire, of, eyes)) : []),
  ];
}

const one = (deed: Evidence[number]['deed'], outcome: Outcome | undefined): Evidence =>
  outcome === undefined ? [] : [{ deed, outcome }];

function pressedAs({ facts, findings, traces, missing }: Verdict, of: Switch, eyes: Eyes): Push | undefined {
  const kinds: readonly string[] = findings.map(({ kind }) => kind);
  if (kinds.includes('flickers')) return jumps;
  if (missing.length > 0 || !facts.presses || facts.presses.asked === 0) return undefined;
  const elsewhere = facts.answeredBy !== undefined || kinds.includes('moves-together');
  const beside = elsewhere ? 'another' : 'no other';
  const away = traces.flatMap((trace) => awayState(trace, of.input) ?? [])[0];
  if (!away) return besides(still, beside);
  if (kinds.includes('misses-presses')) return jumps;
  const seen = glimpsed(away, eyes);
  if (seen === undefined) return undefined;
  return besides(kinds.includes('sticks') ? stays(seen) : to(seen), beside);
}

/** Counts only where a press with the plug out and one after it showed that it was the right plug: then there is a row. */
function outAs({ facts, findings, traces }: Verdict, of: Switch, eyes: Eyes): Glimpse | undefined {
  if (findings.some(({ kind }) => kind === 'floats-open')) return jumps;
  if (!facts.row) return undefined;
  const points = pointsOf(
    traces.find(({ label }) => label === 'out'),
    of.input,
  );
  const last = points.at(-1);
  return last && glimpsed(last, eyes);
}

const pointsOf = (trace: Trace | undefined, input: string) =>
  trace?.signals.find((each) => each.input === input)?.points ?? [];

const firstState = (trace: Trace | undefined, input: string): State | undefined => pointsOf(trace, input)[0];

/** The longest state away from the first: bounce is brief. */
function awayState(trace: Trace, input: string): State | undefined {
  const points = pointsOf(trace, input);
  const [first] = points;
  const away = points
    .map((point, i) => ({ point, lasts: (points[i + 1]?.t ?? point.t) - point.t }))
    .filter(({ point }) => first && (point.level !== first.level || point.active !== first.active))
    .toSorted((a, b) => b.lasts - a.lasts);
  return away[0]?.point;
}

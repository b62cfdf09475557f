import type { CauseFacts, SearchOrder } from '../../model/cause-facts.ts';
import { knownOnly } from '../../model/known-only.ts';
import { type Switch, switchOf } from '../../model/machine.ts';
import type { Outcome } from '../../model/outcomes.ts';
import type { Check, Known, Procedure, Scene } from '../../model/procedure.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { withoutEvidence } from '../judging/status.ts';
import { flickerAtRest } from '../limits.ts';
import type { Asking, Latest } from '../procedures/asking.ts';
import { motorsOff, untilUnbroken } from '../procedures/motors-off.ts';
import { restMustBeRest } from '../procedures/rest-must-be-rest.ts';
import { excursions } from '../signal/excursion.ts';
import { resolutionOf } from '../signal/resolution.ts';
import { agree, stateIn } from '../signal/track.ts';
import { beginSearch, blocked } from './begin-search.ts';
import { candidatesOf } from './candidates.ts';
import { causeFacts, type Learnt } from './conclude.ts';
import { doings } from './doings/all.ts';
import { restSeconds } from './doings/presses.ts';
import { seenHeld } from './seen.ts';
import { type Doing, type Site, toldBy } from './site.ts';

type Item =
  | { readonly cause: CauseFacts }
  | { readonly missing: Missing; readonly isInStream: boolean }
  | { readonly motorsOff: true };

/**
 * Why does this input not do what it should? What may be the matter is weighed; what a person can do or look at to tell most for
 * the least time and the least danger is asked of her, one thing after the other, until one cause is left or nothing left tells more.
 */
export function troubleshoot(order: SearchOrder): Check<Item> {
  return {
    name: 'troubleshoot',
    gather: (scene) => gather(order, scene),
    judge: (items) => judge(order, items),
    teaches,
  };
}

function* gather(order: SearchOrder, scene: Scene): Procedure<Item> {
  const of = switchOf(scene.machine, order.subject);
  if (!of) return;
  const latest: Latest = { status: scene.now };
  const missing = yield* motorsOff('troubleshoot', scene, latest);
  if (missing) {
    yield { keep: { missing, isInStream: true } };
    return;
  }
  yield { keep: { motorsOff: true } };
  const site = yield* listen(of, scene, latest);
  if (!site) {
    yield { keep: { missing: 'input-not-reported', isInStream: false } };
    return;
  }
  yield* seek(order, site);
}

/**
 * Hands off first, which is a deed itself: what it reads by itself, and which inputs change with nobody near. What stands on the
 * switch is moved off it before that counts.
 */
function* listen(of: Switch, scene: Scene, latest: Latest): Asking<(Site & { rest: Learnt }) | undefined> {
  const ask = { check: 'troubleshoot', action: 'hands-off', seconds: restSeconds } as const;
  let { window } = yield* untilUnbroken(ask, latest);
  const before = latest.status && stateIn(latest.status, of.input);
  if (!before) return undefined;
  yield* restMustBeRest('troubleshoot', of, of.input, scene, latest);
  const state = (latest.status && stateIn(latest.status, of.input)) ?? before;
  if (!agree(before, state)) window = (yield* untilUnbroken(ask, latest)).window;
  const site: Site = {
    of,
    scene,
    latest,
    told: toldBy(state),
    surePulse: resolutionOf(window)?.surePulse ?? Number.POSITIVE_INFINITY,
    wiring: candidatesOf(scene.machine, of).wirings[0],
    deaf: excursions(window)
      .filter(({ edges }) => edges >= flickerAtRest)
      .map(({ input }) => input),
    answers: false,
    beside: undefined,
    plugConfirmed: undefined,
    motorsOn: false,
  };
  const seen = seenHeld(window, site);
  return 'missing' in seen ? undefined : { ...site, rest: { deed: 'rest', ...seen } };
}

function* seek(order: SearchOrder, site: Site & { readonly rest: Learnt }): Procedure<Item> {
  const { of, scene } = site;
  const candidates = candidatesOf(scene.machine, of);
  let search = beginSearch(order, site, candidates);
  const learnt: Learnt[] = [];
  const notDone: { deed: Learnt['deed']; why: Missing }[] = [];
  const learn = (each: Learnt): void => {
    learnt.push(each);
    search = search.learnt(each.deed, each.outcome);
  };
  for (const { deed, outcome } of order.earlier) if (deed !== 'rest') learn({ deed, outcome, earlier: true });
  learn(site.rest);
  const facts = (isOver: boolean) => ({
    cause: causeFacts({
      ...{ search, candidates, order, learnt, notDone, isOver },
      told: site.told,
      beside: site.beside ?? order.beside,
    }),
  });
  for (;;) {
    // Kept at every step: a search that is broken off tells how far it came.
    yield { keep: facts(false) };
    const next = search.next();
    search = next.search;
    site.wiring = search.wiring;
    if (!next.trial) break;
    const { name } = next.trial;
    const isAgain = learnt.some(({ deed }) => deed === name);
    const doing: Doing<Outcome> = doings[name];
    const done = yield* isAgain ? onceMore(doing(site)) : doing(site);
    if ('outcome' in done) {
      learn({ deed: name, ...done });
      continue;
    }
    notDone.push({ deed: name, why: done.missing });
    search = search.ruledOut(name, done.kind);
    if (done.ends) return;
  }
  notDone.push(...blocked(order, site, candidates, { learnt, notDone }));
  yield { keep: facts(true) };
}

/** The first thing that is asked for says that it is not new. */
function* onceMore<Result>(asking: Asking<Result>): Asking<Result> {
  let step = asking.next();
  for (let isFirst = true; !step.done; isFirst = false) {
    const { value } = step;
    const ended = yield isFirst ? { ...value, ask: { ...value.ask, onceMore: true } } : value;
    step = asking.next(ended);
  }
  return step.value;
}

function judge({ subject }: SearchOrder, items: readonly Item[]): readonly Verdict[] {
  const of = { check: 'troubleshoot', subject } as const;
  const found = items.findLast((item) => 'cause' in item);
  const without = items.findLast((item) => 'missing' in item);
  if (without && !without.isInStream)
    return [
      {
        ...withoutEvidence(of, without.missing),
        findings: [{ kind: 'input-not-in-stream', input: subject.split('/')[0] ?? subject }],
      },
    ];
  if (without) return [withoutEvidence(of, without.missing)];
  if (!found) return [withoutEvidence(of, 'stopped')];
  const { cause } = found;
  const isNothing = cause.causes.some((each) => each.length === 0);
  const isSound = isNothing && cause.causes.length === 1 && cause.ended === 'named';
  const stands = { ...of, evidence: 'edge', findings: [], facts: { cause }, traces: [] } as const;
  if (cause.ended === 'stopped')
    return [{ ...stands, status: 'inconclusive', missing: [cause.notDone.at(-1)?.why ?? 'stopped'] }];
  if (isSound) return [{ ...stands, status: 'proved', missing: [] }];
  // Where it may still be that nothing is wrong, no fault has been shown.
  return [
    isNothing
      ? { ...stands, status: 'inconclusive', missing: ['not-told-apart'] }
      : { ...stands, status: 'failed', missing: [] },
  ];
}

function teaches(items: readonly Item[], scene: Scene): Partial<Known> {
  const cause = items.findLast((item) => 'cause' in item)?.cause;
  const without = items.findLast((item) => 'missing' in item);
  return {
    motorsOff: !without && (scene.known.motorsOff || items.some((item) => 'motorsOff' in item)),
    ...(without && { handsOff: without.missing }),
    ...(cause && { causes: cause.causes, ...knownOnly({ beside: cause.beside }) }),
  };
}

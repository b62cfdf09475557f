import type { WatchedDeed } from '../../../model/deed-names.ts';
import { inputOf, type Switch } from '../../../model/machine.ts';
import { type Glimpse, jumps, type Neighbouring, type Push } from '../../../model/outcomes.ts';
import type { Ended } from '../../../model/procedure.ts';
import { ms, seconds } from '../../../model/units.ts';
import type { Pressed } from '../../judging/press-evidence.ts';
import { timeToPlug } from '../../limits.ts';
import type { Asking } from '../../procedures/asking.ts';
import { put, refusal } from '../../procedures/asking.ts';
import { letGo } from '../../procedures/let-go.ts';
import { untilUnbroken } from '../../procedures/motors-off.ts';
import { pressOnce } from '../../procedures/press-once.ts';
import { excursions } from '../../signal/excursion.ts';
import { isJumping, seenHeld, seenMoved, seenPushed } from '../seen.ts';
import type { Doing, Done, NotDone, Site } from '../site.ts';

const check = 'troubleshoot' as const;
/** Hands off for so long, s: an input that jumps does so every second or so. */
export const restSeconds = seconds(6);

export const rest: Doing<Glimpse> = function* (site) {
  const ask = { check, action: 'hands-off', seconds: restSeconds } as const;
  const { window } = yield* untilUnbroken(ask, site.latest);
  return seenHeld(window, site);
};

export const press: Doing<Push> = function* (site) {
  const first = yield* pressed(site.of, site, 1);
  if ('missing' in first) return first;
  if (first.moved.length > 0) return outcomeOf(first, site);
  const second = yield* pressed(site.of, site, 2);
  if ('missing' in second) return second;
  if (second.moved.length === 0) return outcomeOf(second, site);
  // One press answered and one did not: it comes and goes.
  const own = second.moved.some(({ input }) => input === site.of.input);
  return own ? { outcome: jumps } : outcomeOf(second, site);
};

type PressedOr = Pressed | Extract<Done, { readonly missing: unknown }>;

/** A press that nothing answered is asked for once more, for a finger slips: that is its second round. */
function* pressed(of: Switch, { latest, deaf, of: { input } }: Site, round: 1 | 2): Asking<PressedOr> {
  const press = { check, round, rounds: round, expect: 'answer', label: 'press', onGap: 'repeat' } as const;
  // An input that jumps by itself would end the ask before anyone has pressed: it is read from the window instead.
  const outcome = yield* pressOnce(of, { ...press, deaf }, latest);
  if (outcome.kind === 'refused') return { missing: outcome.why };
  if (outcome.moved.length === 0 && !outcome.confirmed) return { missing: 'no-answer-given' };
  const jumping = deaf.includes(input) && edgesOf(outcome, input) > 0;
  return jumping ? { ...outcome, moved: [] } : outcome;
}

const edgesOf = ({ trace }: Pressed, input: string): number =>
  (trace.signals.find((each) => each.input === input)?.points.length ?? 1) - 1;

function outcomeOf(outcome: Pressed, site: Site): Done<Push> {
  const { input } = site.of;
  if (site.deaf.includes(input)) return { outcome: jumps };
  const seen = seenMoved(outcome.moved, outcome.stuck.includes(input), site);
  site.answers = outcome.moved.some((each) => each.input === input) && !outcome.stuck.includes(input);
  return seen;
}

/** A tap of a twentieth of a second must meet two reports at the least. */
const briefestTap = ms(25);

/** Done by the person in her own time, watched from the ask to the answer. */
function* whileDone(topic: WatchedDeed, { of, latest }: Site): Asking<Ended | NotDone> {
  const about = { check, action: 'confirm', topic, subject: of.subject, seconds: timeToPlug } as const;
  const ask = of.axis === undefined ? about : { ...about, axis: of.axis };
  let ended = yield* put(ask, latest);
  while (ended.by === 'gap') ended = yield* put(ask, latest);
  return ended.answer === 'yes' ? ended : { missing: refusal(ended) ?? 'not-confirmed' };
}

/** The input is to stay as it is meanwhile; `heldByHand`: pressed for it. */
export const watched = (topic: WatchedDeed, heldByHand: boolean): Doing<Glimpse> =>
  function* (site) {
    const ended = yield* whileDone(topic, site);
    return 'missing' in ended ? ended : seenHeld(ended.window, site, heldByHand);
  };

/** The switch is operated meanwhile, and let go. */
export const pushed = (topic: 'tap' | 'carriage'): Doing<Push> =>
  function* (site) {
    const { of, latest } = site;
    if (topic === 'tap' && !(site.surePulse <= briefestTap)) return { missing: 'stream-too-slow' };
    const ended = yield* whileDone(topic, site);
    if ('missing' in ended) return ended;
    if (site.deaf.includes(of.input)) return { outcome: jumps };
    const moved = excursions(ended.window, site.deaf);
    const after = { halted: moved.length > 0, saidLetGo: true, plugIsOut: false };
    const stuck = yield* letGo(of, check, moved, after, latest);
    return seenPushed(ended.window, stuck.includes(of.input), site);
  };

/** A tug or a bent cable shows on an open contact only while a hand holds it closed. */
export const handled =
  (topic: 'tug' | 'flex'): Doing<Glimpse> =>
  (site) =>
    watched(topic, site.wiring.contact === 'normally open')(site);

/** The switch whose input answered before, else the nearest ones of the same connector: the first that tells something counts. */
export const neighbour: Doing<Neighbouring> = function* (site) {
  let done: Done<Neighbouring> = { missing: 'out-of-reach' };
  for (const each of neighboursOf(site)) {
    done = yield* pressedBeside(each, site);
    if (!('outcome' in done) || done.outcome !== 'own') return done;
  }
  return done;
};

function* pressedBeside(beside: Switch, site: Site): Asking<Done<Neighbouring>> {
  const outcome = yield* pressed(beside, site, 1);
  if ('missing' in outcome) return outcome;
  if (site.deaf.includes(site.of.input)) return { outcome: jumps };
  const moved = outcome.moved.map(({ input }) => input);
  if (moved.includes(site.of.input)) site.beside = beside.input;
  const [own, its] = [moved.includes(site.of.input), moved.includes(beside.input)];
  const flickered = outcome.moved.find(({ input }) => input === site.of.input);
  if (flickered && isJumping(flickered)) return { outcome: jumps };
  if (own) return { outcome: its ? 'both' : 'this one' };
  if (its) return { outcome: 'own' };
  return { outcome: moved.length > 0 ? 'third' : 'none' };
}

function neighboursOf({ of, scene, beside }: Site): readonly Switch[] {
  const { machine, streamInputs } = scene;
  const connector = inputOf(machine, of.input)?.connector;
  const others = machine.inputs.filter(
    ({ name, switches: [first, ...more] }) =>
      name !== of.input &&
      more.length === 0 &&
      first.reach === 'by hand' &&
      !first.duty.includes('stop') &&
      streamInputs.includes(name),
  );
  const at = machine.inputs.findIndex(({ name }) => name === of.input);
  const near = (name: string) => Math.abs(machine.inputs.findIndex((each) => each.name === name) - at);
  const [first, ...more] = others.toSorted(
    (a, b) =>
      Number(b.name === beside) - Number(a.name === beside) ||
      Number(b.connector === connector) - Number(a.connector === connector) ||
      near(a.name) - near(b.name),
  );
  if (!first) return [];
  const also = more.filter((each) => connector !== undefined && each.connector === connector);
  const wanted = first.name === beside ? [first] : [first, ...also.slice(0, 1)];
  return wanted.map(({ switches }) => switches[0]);
}

import type { PlugEnd } from '../../../model/ask.ts';
import { type Glimpse, jumps, type Linked, type Outcome, outThenLinked } from '../../../model/outcomes.ts';
import { plugAttempts, timeToAnswer, timeToPlug } from '../../limits.ts';
import { type Asking, put, refusal } from '../../procedures/asking.ts';
import { mayUnplug } from '../../procedures/may-unplug.ts';
import { putBack, unplugAsk } from '../../procedures/plugs.ts';
import { pressOnce } from '../../procedures/press-once.ts';
import { settledState } from '../../signal/settled.ts';
import { linkAt } from '../allowed.ts';
import { type Doing, type Done, glimpsed, type NotDone, type Site } from '../site.ts';

const check = 'troubleshoot' as const;

/** With the plug out `meanwhile` is done, or only looked at; then it is put back, whatever came of it. */
export function* whileOut<Seen extends Outcome>(
  at: PlugEnd,
  site: Site,
  meanwhile: (out: Glimpse) => Asking<Done<Seen>> | Done<Seen>,
): Asking<Done<Seen>> {
  const { of, latest } = site;
  const may = yield* mayPull(site);
  if (may !== true) return may;
  for (let attempt = 1; ; attempt++) {
    const pulled = yield* put(unplugAsk(of, at, attempt > 1, check), latest);
    if (pulled.by === 'gap') {
      // Nobody knows whether it is out: it is asked back in before it is pulled again.
      if ((yield* putBack(of, at, 'still-out', latest, check)) === 'refused') return stillOut;
      continue;
    }
    const why = refusal(pulled);
    if (why) return { missing: why };
    const settled = settledState(pulled.window, of.input, pulled.answeredAt);
    const out =
      settled.kind === 'flickers'
        ? jumps
        : settled.kind === 'holds'
          ? glimpsed(settled.state, site)
          : undefined;
    // An input that nothing holds while its plug is out jumps, pressed or not.
    const isWrong = site.answers && out !== jumps && (yield* answersWhileOut(site));
    let done: Done<Seen> = { missing: isWrong ? 'control-press' : 'settled-level' };
    if (!isWrong && out !== undefined) {
      const then = meanwhile(out);
      done = 'next' in then ? yield* then : then;
    }
    if ('ends' in done) return done;
    const back = yield* putBack(of, at, isWrong ? 'wrong-plug' : undefined, latest, check);
    if (back === 'refused') return stillOut;
    if (!isWrong || attempt === plugAttempts) return done;
  }
}

const stillOut: NotDone = { missing: 'replug', ends: true };

/** Once a session: may this plug be pulled at all? */
function* mayPull(site: Site): Asking<true | NotDone> {
  if (site.plugConfirmed === true) return true;
  if (site.plugConfirmed === false) return { missing: 'plug-not-confirmed' };
  const may = yield* mayUnplug(check, site.of, site.latest);
  site.plugConfirmed = may === 'switch' || may === 'controller';
  return may === 'switch' || may === 'controller' ? true : { missing: may };
}

/** A switch that still answers was not the one unplugged. */
function* answersWhileOut({ of, latest, deaf }: Site): Asking<boolean> {
  const press = { check, round: 1, rounds: 1, expect: 'no-answer', label: 'press-while-out' } as const;
  const outcome = yield* pressOnce(of, { ...press, deaf, onGap: 'repeat' }, latest);
  return outcome.kind === 'pressed' && outcome.moved.some(({ input }) => input === of.input);
}

export const unplugged =
  (at: PlugEnd): Doing<Glimpse> =>
  (site) =>
    whileOut(at, site, (out) => ({ outcome: out }));

/** A link in the place of the closed contact; it always comes out again, or the search ends with what is still in. */
export const linked =
  (at: PlugEnd): Doing<Linked> =>
  (site) =>
    whileOut(at, site, function* (out): Asking<Done<Linked>> {
      const { of, latest } = site;
      const ask = {
        check,
        subject: of.subject,
        at,
        terminals: linkAt(at, site),
        seconds: timeToPlug,
      } as const;
      const joined = yield* put({ ...ask, action: 'jumper' }, latest);
      const why = joined.by === 'gap' ? undefined : refusal(joined);
      if (why) return { missing: why };
      const settled = settledState(joined.window, of.input, joined.answeredAt);
      let freed = yield* put({ ...ask, action: 'unjumper', seconds: timeToAnswer }, latest);
      while (freed.by === 'gap')
        freed = yield* put({ ...ask, action: 'unjumper', seconds: timeToAnswer }, latest);
      if (freed.answer !== 'done') return stillOut;
      if (joined.by === 'gap') return { missing: 'stream-broke-off' };
      if (settled.kind === 'flickers') return { outcome: outThenLinked(out, jumps) };
      const seen = settled.kind === 'holds' ? glimpsed(settled.state, site) : undefined;
      return seen === undefined ? { missing: 'settled-level' } : { outcome: outThenLinked(out, seen) };
    });

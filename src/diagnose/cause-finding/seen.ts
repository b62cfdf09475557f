import { type InputName, inputOf } from '../../model/machine.ts';
import {
  besides,
  bounces,
  type Glimpse,
  jumps,
  type Own,
  type Push,
  stays,
  still,
  to,
} from '../../model/outcomes.ts';
import type { Window } from '../../model/procedure.ts';
import { edgesOfOnePush, flickerAtRest } from '../limits.ts';
import { changes, type Excursion, excursions } from '../signal/excursion.ts';
import { track } from '../signal/track.ts';
import { type Done, glimpsed, type NotDone, type Site } from './site.ts';

const notReported: NotDone = { missing: 'input-not-reported' };

/** What the input was while nothing was to happen to it, or while it was held one way; a hand that came and went is two edges. */
export function seenHeld(window: Window, site: Site, heldByHand = false): Done<Glimpse> {
  const samples = track(window, site.of.input);
  const moved = changes(samples);
  const last = samples.at(-1);
  if (!last) return notReported;
  if (moved.length >= (heldByHand ? flickerAtRest + 1 : flickerAtRest)) return { outcome: jumps };
  const held = heldByHand && moved[0] ? moved[0] : last;
  const seen = glimpsed(held, site);
  return seen === undefined ? notReported : { outcome: seen };
}

/** What a push and a letting go came to, on this input and on others. */
export function seenPushed(window: Window, isStuck: boolean, site: Site): Done<Push> {
  if (track(window, site.of.input).length === 0) return notReported;
  return seenMoved(excursions(window, site.deaf), isStuck, site);
}

export function seenMoved(moved: readonly Excursion[], isStuck: boolean, site: Site): Done<Push> {
  const own = moved.find(({ input }) => input === site.of.input);
  const other = moved.find(({ input }) => input !== site.of.input);
  if (other) site.beside = other.input;
  const seen = own ? pushedAs(own, isStuck, site) : still;
  if (seen === undefined) return notReported;
  const beside = other === undefined ? 'no other' : isOtherEnd(other.input, site) ? 'other end' : 'another';
  return { outcome: besides(seen, beside) };
}

/** More edges than a hand makes, too far apart for bounce. */
export const isJumping = ({ edges, bounces: close }: Excursion): boolean =>
  edges > edgesOfOnePush && close < edges / 2;

function pushedAs(own: Excursion, isStuck: boolean, site: Site): Own | undefined {
  const there = glimpsed(own.away, site);
  if (there === undefined) return undefined;
  if (isJumping(own)) return jumps;
  if (isStuck || !own.returned) return stays(there);
  return own.bounces > 0 ? bounces(there) : to(there);
}

const isOtherEnd = (input: InputName, { of, scene }: Site): boolean => {
  const other = inputOf(scene.machine, input);
  return (
    other?.switches.some(({ axis, end }) => axis !== undefined && axis === of.axis && end !== of.end) ?? false
  );
};

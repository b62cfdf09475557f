import type { Ask } from '../model/ask.ts';
import { type Machine, switchOf } from '../model/machine.ts';
import { cautions, dropCautions } from './cautions.ts';
import { listed } from './figures.ts';
import type { AskWords } from './instruction.ts';
import { type Handling, handlingOf, named, shortly } from './place.ts';

type Press = Extract<Ask, { readonly action: 'press' }>;
type Release = Extract<Ask, { readonly action: 'release' }>;
type Way = { readonly short: string; readonly long: (what: string) => string };

/** One push and let go, told for what the thing is. */
const pushed = {
  lever: { short: 'Press', long: (what) => `Press ${what}, hold it about one second, then let go.` },
  stop: {
    short: 'Press, then unlatch',
    long: (what) => `Press ${what} until it latches, wait about one second, then unlatch it.`,
  },
  door: {
    short: 'Open, then close',
    long: (what) => `Open the door at ${what}, wait about one second, then close it.`,
  },
  probe: {
    short: 'Touch',
    long: (what) =>
      `Operate ${what} for about one second, then let go: hold the tool or its clip against the plate, or push the stylus aside.`,
  },
  steel: {
    short: 'Steel to the face',
    long: (what) =>
      `Hold a piece of steel flat to the face of ${what} for about one second, then take it away.`,
  },
  magnet: {
    short: 'Magnet to the face',
    long: (what) => `Hold its magnet to the face of ${what} for about one second, then take it away.`,
  },
  slot: {
    short: 'Block the slot',
    long: (what) => `Put something opaque into ${what} for about one second, then take it out.`,
  },
} satisfies Record<Handling, Way>;

export function pressWords(ask: Press, machine: Machine): AskWords {
  const what = named(ask.subject, machine);
  const handling = handlingOf(switchOf(machine, ask.subject));
  const place = shortly(ask.subject, machine);
  const way = pushed[handling];
  const hands = cautions('motorsOff', handling === 'stop' ? 'stayClear' : 'fingers');
  if (ask.expect === 'no-answer')
    return {
      text: `Its plug is out. ${way.long(what)} Once is enough; then say that you did it. No answer is expected in the stream: if one comes, another plug than the right one was pulled.`,
      cautions: hands,
      short: `Plug out, once: ${place}`,
    };
  if (ask.check === 'stop')
    return {
      text: `Press ${what}, leave it pressed in, then say that you did.`,
      cautions: cautions('stayClear', 'statusNoProof'),
      short: `Press and leave in: ${place}`,
    };
  const again = ask.round > 1;
  const rounds = ask.rounds > 1 ? ` This is press ${ask.round} of ${ask.rounds}.` : '';
  const deaf =
    ask.deaf.length === 0
      ? ''
      : ` ${listed(ask.deaf)} ${ask.deaf.length === 1 ? 'flickers' : 'flicker'} unasked and ${ask.deaf.length === 1 ? 'is' : 'are'} not listened to.`;
  const first = ask.round === 1 ? [...dropCautions(machine), ...cautions('clothing')] : [];
  const told = way.long(what);
  return {
    text: `${again ? `Again: ${told.charAt(0).toLowerCase()}${told.slice(1)}` : told}${rounds}${deaf}`,
    cautions: [...hands, ...first],
    short: `${way.short}: ${place}${ask.rounds > 1 ? ` (${ask.round} of ${ask.rounds})` : ''}`,
  };
}

export function releaseWords(ask: Release, machine: Machine): AskWords {
  const what = named(ask.subject, machine);
  const place = shortly(ask.subject, machine);
  const told = {
    held: {
      text: `Let go of ${what} and take away whatever presses on it. The stream still shows it operated.`,
      short: `Let go: ${place}`,
      cautions: cautions('motorsOff', 'fingers', 'noBridge'),
    },
    sticks: {
      text: `Take your hand off ${what}. If it stays operated, move it back by hand, then say that you did.`,
      short: `Free it: ${place}`,
      cautions: cautions('motorsOff', 'fingers'),
    },
    latched: {
      text: `Unlatch ${what}: turn or pull it until it springs out. Touch nothing else.`,
      short: `Unlatch: ${place}`,
      cautions: cautions('stayClear'),
    },
  } satisfies Record<Release['why'], AskWords>;
  return told[ask.why];
}

import type { FaultStudied, FoundWhen, MeterStudied } from '../../model/wiring-study.ts';
import { looks, type State, state } from '../circuit/state.ts';
import { nominalWorld, type Wiring } from '../circuit/wiring.ts';
import type { Fault, Proof } from './fault.ts';
import { shownBy } from './meter.ts';
import { type Reported, readingOf, type Seen } from './reading-of.ts';

/** States in which a switch must be seen, whoever presses it and however briefly. */
const presses: readonly State[] = [
  looks.pressed,
  looks['pressed by machine'],
  state({ actuation: 'tapped' }),
];
/** What goes on around an input on a working day, with nobody at the switch. */
const workday: readonly State[] = [
  looks.rest,
  ...(['drives', 'spindle', 'axis'] as const).map((running) => state({ running })),
];

/** One fault in a wiring: what is read, when that is noticed, whether the switch is lost. `sound`: what is read with the plug out and nothing wrong. */
export function studyFault(
  wiring: Wiring,
  fault: Fault,
  sound: Seen = readingOf(wiring, looks.unplugged, []),
): FaultStudied {
  const world = nominalWorld(wiring);
  const known = new Map<State, Seen>();
  const seen = (at: State): Seen => {
    const reading = known.get(at) ?? readingOf(wiring, at, [fault], world);
    known.set(at, reading);
    return reading;
  };
  const [rest, pressed, unplugged] = [looks.rest, looks.pressed, looks.unplugged].map(seen) as [
    Seen,
    Seen,
    Seen,
  ];
  const idle = workday.map((at) => seen(at).reported);
  const pressing = presses.map((at) => seen(at).reported);
  return {
    fault: fault.name,
    rest: rest.reported,
    pressed: pressed.reported,
    unplugged: unplugged.reported,
    found: foundWhen(
      idle,
      pressed.reported,
      seen(looks['let go']).reported,
      pressed.chatters,
      differs(unplugged, sound),
    ),
    dangerous: isLost(rest.reported, pressing) || fault.beyond === 'power-stays-on',
    besides: pressed.neighbour !== undefined && pressed.neighbour !== rest.neighbour,
    likelihood: fault.likelihood,
    meter: meterOf(fault, wiring),
    beyond: fault.beyond,
  };
}

const shows = (reported: Reported): boolean => reported === 'active' || reported === 'unsteady';

/** A reading that depends on the unit is not counted on: it may look as if nothing were wrong. */
function foundWhen(
  idle: readonly Reported[],
  pressed: Reported,
  letGo: Reported,
  chatters: boolean,
  unplugs: boolean,
): FoundWhen {
  if (idle.some(shows)) return 'at once';
  if (pressed === 'inactive' || pressed === 'unsteady' || shows(letGo) || chatters) return 'next press';
  return unplugs ? 'unplugging' : 'never';
}

/** A press that does not surely read active, or a rest that reads like one: the switch tells nothing any more. */
const isLost = (rest: Reported, pressing: readonly Reported[]): boolean =>
  rest === 'active' || pressing.some((reported) => reported !== 'active');

const differs = (one: Seen, other: Seen): boolean =>
  one.reported !== other.reported && one.reported !== 'uncertain' && other.reported !== 'uncertain';

function meterOf(fault: Fault, wiring: Wiring): MeterStudied | undefined {
  const proof: Proof = fault.proof(wiring);
  if (proof.by === 'looking') return undefined;
  const [faulty, sound] = [shownBy(proof, wiring, [fault]), shownBy(proof, wiring, [])];
  if (faulty === undefined || sound === undefined) return undefined;
  const { state: at } = proof;
  return {
    quantity: proof.by,
    from: proof.by === 'amps' ? proof.through : proof.from,
    to: proof.by === 'amps' ? proof.through : proof.to,
    undone: proof.by === 'ohms' ? proof.undone : 'nothing',
    pressed: at.actuation !== 'rest',
    running: at.running,
    handling: at.handling,
    plugOut: at.plug !== 'in',
    faulty,
    sound,
  };
}

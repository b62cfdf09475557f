import type { FaultName } from '../../../model/fault-names.ts';
import { atRest } from '../../circuit/state.ts';
import { always, conducts, contactOhms, leaks, opens, shorts } from '../effects.ts';
import type { Effect, Entry } from '../fault.ts';
import { acrossContact, pressing, whenClosed, whenOpen } from '../proofs.ts';
import { changeover, dryContact, either, parallel, plate, series, stopButton, touch } from '../traits.ts';

const acrossLeak =
  (...ohms: readonly number[]): Effect =>
  (rig) =>
    leaks(rig, 'device signal', 'device common', ...ohms);

/** What goes wrong where the circuit is made and broken. */
export const contactFaults = {
  'contact-welded': {
    applies: dryContact,
    alters: always(true),
    likelihood: { fresh: 2, worked: 25 },
    proof: acrossContact(whenOpen),
  },
  'contact-filmed': {
    applies: either(dryContact, touch),
    alters: contactOhms(100, 100e3),
    likelihood: { fresh: 6, worked: 70 },
    proof: acrossContact(whenClosed),
  },
  'contact-never-makes': {
    applies: dryContact,
    alters: always(false),
    likelihood: { fresh: 3, worked: 25 },
    proof: acrossContact(whenClosed),
  },
  'common-blade-unused': {
    applies: changeover,
    alters: always(false),
    likelihood: { fresh: 25, worked: 0 },
    proof: acrossContact(whenClosed),
  },
  'wrong-blade': {
    applies: changeover,
    alters: (rig) =>
      conducts(rig, (how) => ({
        rest: !how.rest,
        'pressed by hand': !how['pressed by hand'],
        'pressed by machine': !how['pressed by machine'],
        'let go': !how['let go'],
        tapped: !how.tapped,
      })),
    likelihood: { fresh: 60, worked: 1 },
    proof: acrossContact(() => atRest),
  },
  'contact-bridged': {
    applies: dryContact,
    alters: acrossLeak(1e3, 10e3, 50e3),
    degrees: [acrossLeak(400, 2e3), acrossLeak(3e3, 12e3), acrossLeak(20e3, 100e3)],
    likelihood: { fresh: 2, worked: 50 },
    proof: acrossContact(whenOpen),
  },
  'one-leg-open': {
    applies: parallel,
    alters: opens('leg 1'),
    likelihood: { fresh: 5, worked: 10 },
    proof: () => ({ by: 'ohms', from: 'device signal', to: 'leg 1 end', undone: 'at switch', state: atRest }),
  },
  'one-contact-bypassed': {
    applies: series,
    alters: always(true),
    likelihood: { fresh: 3, worked: 10 },
    proof: acrossContact(whenOpen),
  },
  'contact-block-off': {
    applies: stopButton,
    alters: always(true),
    likelihood: { fresh: 2, worked: 5 },
    proof: acrossContact(whenOpen),
  },
  'clip-off': {
    applies: plate,
    alters: always(false),
    likelihood: { fresh: 15, worked: 30 },
    proof: acrossContact(pressing),
  },
  'plate-bonded': {
    applies: plate,
    alters: (rig) => shorts(rig, 'device signal', '0 V', 1),
    likelihood: { fresh: 8, worked: 8 },
    proof: () => ({ by: 'ohms', from: 'device signal', to: '0 V', undone: 'at switch', state: atRest }),
  },
} satisfies Partial<Record<FaultName, Entry>>;

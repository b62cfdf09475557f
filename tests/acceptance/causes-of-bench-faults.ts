import type { FaultName } from '../../src/model/fault-names.ts';

/** One fault of the bench that concerns a single input, and what a search for the cause must have among the named. */
export interface BenchCause {
  /** As `--fault` spells it; the subject where the search is made. */
  readonly plant: string;
  readonly subject: string;
  /** The fault as the knowledge calls it; reasoned from what the bench does, never read off a run. */
  readonly cause: readonly FaultName[];
  readonly because: string;
}

const at = (
  plant: string,
  cause: FaultName | readonly FaultName[],
  because: string,
  subject = 'x-home',
): BenchCause => ({ plant, subject, cause: typeof cause === 'string' ? [cause] : cause, because });

export const benchCauses: readonly BenchCause[] = [
  at('broken-wire:x-home', 'signal-core-open', 'the signal core is cut for good'),
  at('broken-wire:probe', 'signal-core-open', 'the same on a lead without a dog', 'probe'),
  at('crossed:x-home,y-home', 'inputs-crossed', 'the wires of two inputs are on each other’s terminals'),
  at('crossed:x-home,x-far', 'ends-swapped', 'the two are the ends of one axis'),
  at('shifted-plug:P1', 'plug-shifted', 'every wire of the connector is one terminal further along'),
  at('shorted-together:x-home,y-home', 'signals-together', 'two signal cores touch'),
  at('flickers:x-home', 'plug-half-mated', 'a joint in the signal line opens for moments with nobody near'),
  at('floating:x-home', 'pull-resistor-missing', 'nothing holds the open line'),
  at(
    'normally-open:x-home',
    ['wrong-blade', 'polarity-inverted'],
    'the other blade, and the setting turned to fit',
  ),
  at('wrong-contact-declared:x-home', 'wrong-blade', 'the other blade, the setting as it was'),
  at('welded:x-home', 'contact-welded', 'the blades are burnt together'),
  at('never-makes:x-home', 'contact-never-makes', 'the blades no longer meet'),
  at('bent-lever:x-home', 'held-operated', 'the lever stands in by itself'),
  at('sticks:x-home', 'actuator-sticks', 'the lever stays in when it is let go'),
  at('polarity-reversed:x-home', 'polarity-inverted', 'the setting is upside down'),
  at('not-enabled:x-home', 'input-not-enabled', 'the level moves, the function never does'),
  at('dead-input:x-home', 'pin-dead-conducting', 'the pin stays as it was, which is conducting at rest'),
  at('status-block-off', 'contact-block-off', 'the block behind the button stays closed', 'stop'),
  at('welded:doors/flap', 'contact-welded', 'one contact of a chain never opens', 'doors/flap'),
];

/** Bench faults on a single input that the knowledge has no name for, or that are none of the input's: no cause may be named for them. */
export const notInTheKnowledge: readonly { readonly plant: string; readonly because: string }[] = [
  {
    plant: 'slips:x-home',
    because: 'every second push slips off the lever: the person and the lever, not the wiring',
  },
  {
    plant: 'chatters:x-home',
    because: 'worn blades bounce longer than any filter of a sound board waits: no worn contact is known',
  },
  {
    plant: 'held-at-rest:x-home',
    because: 'the axis stands on it, which is asked about and moved off before anything counts',
  },
  {
    plant: 'reports-on-release:x-home',
    because: 'the controller tells late; press and level come out right',
  },
];

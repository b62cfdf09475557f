import type { FaultName } from '../../model/fault-names.ts';
import type { Node } from '../circuit/network.ts';
import type { Rig } from '../circuit/rig.ts';
import type { State } from '../circuit/state.ts';
import type { Wiring, World } from '../circuit/wiring.ts';

/** Where a change is made by a fault: with what the input is built of and what is being done to it. */
export interface Scene {
  readonly wiring: Wiring;
  readonly world: World;
  readonly state: State;
}

/** Several rigs where the fault comes and goes: the input jumps between them. */
export type Effect = (rig: Rig, scene: Scene) => Rig | readonly Rig[];

/** One thing that can be wrong. Adding one is an entry in a list, its name and its words. */
export interface Fault {
  readonly name: FaultName;
  readonly applies: (wiring: Wiring) => boolean;
  readonly alters: Effect;
  /** How differently strong it can be, where that decides what is seen: each on its own, evenly likely. Left out: as `alters`. */
  readonly degrees?: readonly Effect[];
  /** Relative plausibility on a new build and on a machine that worked (judgement of the trade, no source). */
  readonly likelihood: Likelihood;
  /** What shows it beyond doubt; the readings are computed, never typed in. */
  readonly proof: (wiring: Wiring) => Proof;
  /** What no level of this input can show. */
  readonly beyond?: Beyond;
}

export interface Likelihood {
  readonly fresh: number;
  readonly worked: number;
}

/** `missed`: the switch no longer does its duty although the input reads as it should. */
export type Beyond = 'power-stays-on' | 'trip-wanders' | 'one-bit-for-many';

/** A meter put somewhere, or, where no meter helps, the person's own eyes. */
export type Proof =
  | {
      readonly by: 'ohms';
      readonly from: Node;
      readonly to: Node;
      /** Power is off; the plug at the controller, the clamps at the switch, or both are undone. */
      readonly undone: 'at controller' | 'at switch' | 'both ends' | 'nothing';
      readonly state: State;
    }
  | { readonly by: 'volts'; readonly from: Node; readonly to: Node; readonly state: State }
  | { readonly by: 'amps'; readonly through: string; readonly state: State }
  | { readonly by: 'looking' };

export type Entry = Omit<Fault, 'name'>;

import type { Told } from '../../model/cause-facts.ts';
import type { Glimpse } from '../../model/outcomes.ts';
import { atRest, type State, state } from '../circuit/state.ts';
import { nominalWorld, type Wiring, type World } from '../circuit/wiring.ts';
import type { Fault } from '../fault-finding/fault.ts';
import { readingOf, rigsWith, type Seen } from '../fault-finding/reading-of.ts';
import { oddsOf } from './glimpse.ts';
import { type Memory, memoryOf } from './memory.ts';
import type { Odds } from './odds.ts';

/** What surrounds the input, as far as it decides what can be seen. */
export interface Surroundings {
  readonly told: Told;
  /** The other end of the same axis has an input of its own. */
  readonly otherEnd: boolean;
  /** Each input is told to have a polarity of its own: no one setting for all can be wrong. */
  readonly polarityEach?: boolean;
}

/** The input as it would be with some faults in it: every deed asks it what would be seen. */
export class Imagined {
  readonly wiring: Wiring;
  readonly faults: readonly Fault[];
  readonly around: Surroundings;
  readonly world: World;
  private readonly memory: Memory;
  private readonly known: Map<string, unknown>;
  private readonly setting;

  constructor(wiring: Wiring, faults: readonly Fault[], around: Surroundings) {
    this.wiring = wiring;
    this.faults = faults;
    this.around = around;
    this.memory = memoryOf(wiring);
    this.known = this.memory.of(faults);
    this.world = nominalWorld(wiring);
    this.setting = rigsWith(wiring, atRest, faults, this.world)[0]?.setting ?? {
      enabled: true,
      inverted: false,
    };
  }

  has(...names: readonly string[]): boolean {
    return this.faults.some(({ name }) => names.includes(name));
  }

  look(change: Partial<State> = {}): Seen {
    return this.once(`look ${JSON.stringify(change)}`, () =>
      readingOf(this.wiring, state(change), this.faults, this.world, this.memory.levelsIn),
    );
  }

  /** What follows from the wiring and the faults alone is computed once, whatever surrounds them and however old the machine is. */
  once<Value>(key: string, compute: () => Value): Value {
    if (!this.known.has(key)) this.known.set(key, compute());
    return this.known.get(key) as Value;
  }

  glimpse(change: Partial<State> = {}): Odds<Glimpse> {
    return oddsOf(this.look(change), this.setting, this.wiring.contact, this.around.told);
  }
}

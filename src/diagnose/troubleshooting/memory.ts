import { levelsIn } from '../circuit/level.ts';
import type { Element, Network } from '../circuit/network.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Effect, Fault } from '../fault-finding/fault.ts';

/**
 * What was computed for a wiring. Most things that can be the matter leave most networks as they are: each is solved once, and what
 * follows from the faults alone is computed once, whatever surrounds the input and however old the machine is.
 */
export class Memory {
  private readonly levels = new Map<string, ReturnType<typeof levelsIn>>();
  private readonly figures = new Map<string, number>();
  private readonly byEffects = new ByEffects();

  readonly levelsIn: typeof levelsIn = (network, limits, unit, pins) => {
    const key = `${textOf(network)} ${pins?.join()}`;
    const before = this.levels.get(key);
    if (before) return before;
    const now = levelsIn(network, limits, unit, pins);
    this.levels.set(key, now);
    return now;
  };

  /** A figure read off a network: `what` says where. */
  figure(what: string, network: Network, read: () => number): number {
    const key = `${what} ${textOf(network)}`;
    const before = this.figures.get(key);
    if (before !== undefined) return before;
    const now = read();
    this.figures.set(key, now);
    return now;
  }

  /** The memory of these faults in these degrees. */
  of(faults: readonly Fault[]): Map<string, unknown> {
    return faults.reduce((node, { alters }) => node.with(alters), this.byEffects).known;
  }
}

class ByEffects {
  readonly known = new Map<string, unknown>();
  private readonly more = new Map<Effect, ByEffects>();

  with(effect: Effect): ByEffects {
    const next = this.more.get(effect) ?? new ByEffects();
    this.more.set(effect, next);
    return next;
  }
}

const memories = new WeakMap<Wiring, Memory>();

export function memoryOf(wiring: Wiring): Memory {
  const memory = memories.get(wiring) ?? new Memory();
  memories.set(wiring, memory);
  return memory;
}

/** Everything that a solution depends on; capacitors too, for nobody is surprised by too many keys. */
const textOf = (network: Network): string => network.map(partText).join();

function partText(part: Element): string {
  return `${part.name}:${part.from}:${part.to}:${figuresOf(part)}`;
}

function figuresOf(part: Element): string {
  switch (part.kind) {
    case 'resistor':
      return `${part.ohms}`;
    case 'voltage':
      return `${part.volts}`;
    case 'current':
      return `${part.amps}`;
    case 'capacitor':
      return `${part.farads}`;
    case 'diode':
      return `${part.saturation}/${part.ideality}`;
    case 'switch':
      return `${part.closed}/${part.closedOhms}/${part.openOhms}/${part.when ? JSON.stringify(part.when) : ''}`;
  }
}

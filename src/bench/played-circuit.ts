import type { CircuitTruth, Moment, Standing } from './circuit-truth.ts';
import { standings } from './circuit-truth.ts';
import type { FieldLine } from './field-line.ts';
import type { Random } from './random.ts';
import type { Wiring } from './wiring.ts';

/** A fault that comes and goes stays each way for so long; ms. */
const stays: readonly [number, number] = [60, 500];

/** One input's circuit at work: which of its moments lasts, and what that makes of the pin with the contacts and plugs as they are. */
export class PlayedCircuit {
  private readonly truth: CircuitTruth;
  private readonly line: FieldLine;
  private readonly wiring: Wiring;
  private readonly random: Random;
  private moment: Moment;

  constructor(truth: CircuitTruth, line: FieldLine, wiring: Wiring, random: Random) {
    this.truth = truth;
    this.line = line;
    this.wiring = wiring;
    this.random = random;
    this.moment = truth.moments[0];
  }

  get jumps(): boolean {
    return this.truth.moments.length > 1;
  }

  /** Goes on to another moment; returns how long that lasts, ms. */
  jump(): number {
    const others = this.truth.moments.filter((each) => each !== this.moment);
    this.moment = others[Math.floor(this.random.within(0, others.length))] ?? this.moment;
    return this.random.within(...stays);
  }

  /** V at the pin; undefined where nothing holds it. */
  get volts(): number | undefined {
    const { beside } = this.truth;
    const other = beside === undefined ? undefined : this.wiring.line(beside);
    const row = this.moment[standings.indexOf(this.standingOf(this.line))] ?? [];
    const volts = row[other ? standings.indexOf(this.standingOf(other)) : 0];
    return volts ?? undefined;
  }

  private standingOf(line: FieldLine): Standing {
    const [leg] = line.legs;
    const closed = leg?.jumpered || leg?.contact.conducts ? 'closed' : 'open';
    if (leg && !leg.plugged && !leg.jumpered) return `out at switch, ${closed}`;
    return `${this.wiring.isConnectorOut(line.truth.connector) ? 'out at controller' : 'in'}, ${closed}`;
  }
}

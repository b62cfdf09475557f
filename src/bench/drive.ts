import type { Carriage } from './carriage.ts';
import type { Random } from './random.ts';

/** One motor with its driver, and how it is joined to what it moves. */
export class Drive {
  readonly carriage: Carriage;
  private readonly side: number;
  /** What leads and direction setting together make of a positive command. */
  sense: 1 | -1 = 1;
  /** mm moved for one mm counted. */
  scale = 1;
  /** mm of play between motor and carriage. */
  play = 0;
  state: 'turns' | 'dead' | 'buzzes' = 'turns';
  isCoupled = true;
  /** The direction line is open: it turns this way, whatever it is told. */
  oneWay: 1 | -1 | undefined;
  /** Loses steps each time it is taken past this speed, mm/s: so many mm. */
  loses:
    | { readonly above: number; readonly by: readonly [number, number]; readonly random: Random }
    | undefined;
  /** Where in its play it lies. */
  private slack = 0;
  private speed = 0;
  private owes = 0;

  constructor(carriage: Carriage, side: number) {
    this.carriage = carriage;
    this.side = side;
  }

  /** `by` mm as counted, at `speed` mm/s without sign. */
  turn(by: number, speed: number): void {
    if (this.state === 'dead' || by === 0) return;
    if (this.state === 'buzzes') {
      this.carriage.sighting.buzzed = true;
      return;
    }
    if (!this.isCoupled) return;
    const meant = by * this.sense;
    const turned = (this.oneWay === undefined ? meant : Math.abs(meant) * this.oneWay) * this.scale;
    const moved = this.takenUp(this.kept(turned, speed));
    if (moved === 0) return;
    if (!this.carriage.push(this.side, moved, speed)) this.carriage.sighting.buzzed = true;
  }

  private kept(by: number, speed: number): number {
    const { loses } = this;
    if (loses && speed >= loses.above && this.speed < loses.above)
      this.owes += loses.random.within(...loses.by);
    this.speed = speed;
    const lost = Math.min(this.owes, Math.abs(by));
    this.owes -= lost;
    return by - Math.sign(by) * lost;
  }

  /** What is left of a turn once the play has been taken up. */
  private takenUp(by: number): number {
    const free = by > 0 ? this.play - this.slack : this.slack;
    const taken = Math.min(Math.abs(by), Math.max(0, free));
    this.slack += Math.sign(by) * taken;
    return by - Math.sign(by) * taken;
  }
}

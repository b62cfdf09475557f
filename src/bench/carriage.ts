import type { Dog } from './dog.ts';
import { outwardsOf } from './homing-settings.ts';
import { Sighting } from './sighting.ts';
import type { AxisTruth } from './truth.ts';

/** How far a beam lets itself be pulled out of square before its sides take each other along, mm. */
const gives = 8;

/** The thing that really moves: where it is, what it meets, and the switches it works. Nobody counts it. */
export class Carriage {
  readonly truth: AxisTruth;
  readonly dogs: Dog[] = [];
  readonly sighting: Sighting;
  /** Where it meets metal: solid stops, or whatever lies in its way. */
  stops: readonly [number, number];
  private readonly sides: number[];

  constructor(truth: AxisTruth) {
    this.truth = truth;
    this.stops = truth.stops;
    this.sides = Array.from({ length: truth.motors }, () => truth.stands);
    this.sighting = new Sighting(truth.stands, outwardsOf(truth.homes));
  }

  /** mm, true; the middle of a beam. */
  get stands(): number {
    const one = this.sides[0] ?? 0;
    return (one + (this.sides[1] ?? one)) / 2;
  }

  /** How far the second side stands ahead of the first, mm. */
  get racked(): number {
    const [one = 0, other = one] = this.sides;
    return other - one;
  }

  /** One motor pushes its side on by so much; returns whether metal, or the other side, let it. */
  push(side: number, by: number, speed: number): boolean {
    const wished = (this.sides[side] ?? 0) + by;
    this.sides[side] = this.bounded(wished);
    if (this.sides.length > 1) this.pullAlong();
    this.worked(speed);
    return this.sides[side] === wished;
  }

  /** Moved without its motors: by hand, by its weight, with the drives off. */
  moveTo(position: number): void {
    const by = position - this.stands;
    for (const [side, at] of this.sides.entries()) this.sides[side] = this.bounded(at + by);
    this.worked(0);
  }

  /** The second side is pulled ahead of the first by so much, mm. */
  rack(by: number): void {
    this.sides[1] = this.bounded((this.sides[0] ?? 0) + by);
    this.worked(0);
  }

  beginSighting(): void {
    this.sighting.begin(this.stands, this.isOnHome);
    this.sighting.racked = Math.abs(this.racked);
  }

  /** Presses and frees what it stands on and off. */
  worked(speed: number): void {
    for (const dog of this.dogs) dog.work(this.placeOf(dog.side), speed);
    this.sighting.see(this.stands, this.isOnHome);
    if (this.sides.length > 1) this.sighting.racked = Math.max(this.sighting.racked, Math.abs(this.racked));
  }

  /** It stands beyond the dog of its home switch, where nothing presses it any more. */
  get isPastHome(): boolean {
    return this.dogs.some((dog) => this.isOfHome(dog) && dog.isPast(this.placeOf(dog.side)));
  }

  private get isOnHome(): boolean {
    for (const dog of this.dogs) if (dog.isOn && this.isOfHome(dog)) return true;
    return false;
  }

  private isOfHome({ contact }: Dog): boolean {
    return this.truth.homeInputs.includes(contact.input);
  }

  private placeOf(side: number): number {
    const position = this.sides[side] ?? this.stands;
    return this.truth.turns ? oneTurn(position) : position;
  }

  private bounded(position: number): number {
    if (this.truth.turns) return position;
    const [low, high] = this.stops;
    return Math.min(high, Math.max(low, position));
  }

  /** Past what the beam gives, the first side has its way: it takes the second along, or holds it back. */
  private pullAlong(): void {
    const [one = 0, other = one] = this.sides;
    const apart = other - one;
    if (Math.abs(apart) > gives) this.sides[1] = one + Math.sign(apart) * gives;
  }
}

/** Degrees from -180 up to, not including, 180. */
const oneTurn = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;

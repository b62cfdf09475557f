import type { FieldLine } from './field-line.ts';

/** All wires between the switches and the controller's terminals: which lands where, what is pulled, bridged, touching. */
export class Wiring {
  readonly lines: readonly FieldLine[];
  /** Line -> terminal; undefined where it hangs in the air. As drawn: each on its own number. */
  readonly lands: (number | undefined)[];
  private readonly shorts: [FieldLine, FieldLine][] = [];
  private readonly connectorsOut = new Set<string>();
  private readonly bridged = new Set<number>();

  constructor(lines: readonly FieldLine[]) {
    this.lines = lines;
    this.lands = lines.map((_, index) => index);
  }

  line(input: string): FieldLine | undefined {
    return this.lines.find((line) => line.truth.name === input);
  }

  /** Pulls or puts back a whole connector at the controller: everything on it comes along. */
  setConnector(connector: string, out: boolean): void {
    if (out) this.connectorsOut.add(connector);
    else this.connectorsOut.delete(connector);
  }

  isConnectorOut(connector: string): boolean {
    return this.connectorsOut.has(connector);
  }

  /** Bridges a terminal of the controller to its ground, or frees it. */
  setBridge(terminal: number, on: boolean): void {
    if (on) this.bridged.add(terminal);
    else this.bridged.delete(terminal);
  }

  /** Two signal cores that touch each other from now on. */
  short(one: FieldLine, other: FieldLine): void {
    this.shorts.push([one, other]);
  }

  /** Whether a terminal of the controller is joined to ground at this moment. */
  conducts(terminal: number): boolean {
    if (this.bridged.has(terminal)) return true;
    const connector = this.lines[terminal]?.truth.connector;
    if (connector !== undefined && this.connectorsOut.has(connector)) return false;
    return this.lines.some((line, index) => this.lands[index] === terminal && this.lineConducts(line));
  }

  private lineConducts(line: FieldLine): boolean {
    return !line.isOpenOnTheWay && this.touching(line).some((each) => each.reachesGround);
  }

  /** The line and all whose cores touch it, directly or through others. */
  private touching(line: FieldLine): readonly FieldLine[] {
    const found = new Set([line]);
    for (const each of found)
      for (const [one, other] of this.shorts) {
        if (one === each) found.add(other);
        if (other === each) found.add(one);
      }
    return [...found];
  }
}

/** A small network as data: nodes are names, elements know their two nodes, and nothing here is solved yet. */
export type Node = string;

/** The reference: 0 V of the controller's logic, where a meter's black lead stands. */
export const ground: Node = '0 V';

export interface Resistor {
  readonly kind: 'resistor';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  /** Zero is an ideal wire, infinity is nothing at all. */
  readonly ohms: number;
}
export interface VoltageSource {
  readonly kind: 'voltage';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  /** How far `from` stands above `to`. */
  readonly volts: number;
}
export interface CurrentSource {
  readonly kind: 'current';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  /** Driven out of `from`, through the source, into `to`. */
  readonly amps: number;
}
/** Shockley junction: I = saturation (exp(V / (ideality kT/q)) - 1), anode at `from`. */
export interface Diode {
  readonly kind: 'diode';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  readonly saturation: number;
  readonly ideality: number;
}
/** A contact or an output stage: a resistance when closed, another when open. */
export interface Switch {
  readonly kind: 'switch';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  readonly closed: boolean;
  readonly closedOhms: number;
  readonly openOhms: number;
  /** What must hold beside `closed` for it to conduct: a light in the coupler, a supply at the sensor. */
  readonly when?: readonly Control[];
}
/** Open at direct current; it only sets how fast the input follows. */
export interface Capacitor {
  readonly kind: 'capacitor';
  readonly name: string;
  readonly from: Node;
  readonly to: Node;
  readonly farads: number;
}

/** A unit surely lets go at or below `off` and surely works from `on`; between them it depends on the unit. V or A. */
export type Control = { readonly off: number; readonly on: number } & (
  | { readonly by: 'current'; readonly through: string }
  | { readonly by: 'voltage'; readonly plus: Node; readonly minus: Node }
);

export type Element = Resistor | VoltageSource | CurrentSource | Diode | Switch | Capacitor;
export type Network = readonly Element[];

/** Where a unit stands in every range between surely off (0) and surely on (1). */
export type UnitPosition = number;
export const middling: UnitPosition = 0.5;

export const resistor = (name: string, from: Node, to: Node, ohms: number): Resistor => ({
  kind: 'resistor',
  name,
  from,
  to,
  ohms,
});

/** Boltzmann's constant times 300 K (26.85 degrees C) over the elementary charge, V (SI values of 2019, exact). */
export const thermalVolts = (1.380649e-23 * 300) / 1.602176634e-19;

/** The ideality with which a junction of this saturation current drops so many volts at so many amperes. */
export const idealityFor = (volts: number, amps: number, saturation: number): number =>
  volts / (thermalVolts * Math.log(amps / saturation + 1));

export function nodesOf(network: Network): readonly Node[] {
  const nodes = new Set<Node>();
  for (const { from, to } of network) nodes.add(from).add(to);
  return [...nodes];
}

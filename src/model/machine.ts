import type { CircuitKind, CircuitValue } from './machine-file/circuit-kinds.ts';
import type { Mm, Volts } from './units.ts';

/** The machine as its file declares it, with what was left out filled in as unknown. */
export interface Machine {
  readonly name: string;
  readonly units: 'mm' | 'inch';
  /** Set where the file leaves `units` out: its bare lengths were then read as millimetres. */
  readonly unitsAssumed?: true;
  /** Where the person stands when she says left and right. */
  readonly stand: string | undefined;
  readonly polarity: PolarityRule;
  readonly inputs: readonly Input[];
  readonly axes: readonly Axis[];
}

/** Whether the controller has one active-level setting for each input, or a single one for them all. */
export type PolarityRule = 'each' | 'one for all' | 'unknown';
export type ActiveWhen = 'active when open' | 'active when closed' | 'unknown';
export type Duty = 'home' | 'limit' | 'probe' | 'door' | 'stop';
export type End = 'negative' | 'positive';
export type Side = 'left' | 'right' | 'front' | 'back' | 'top' | 'bottom';
export const oppositeSide = {
  left: 'right',
  right: 'left',
  front: 'back',
  back: 'front',
  top: 'bottom',
  bottom: 'top',
} as const satisfies Record<Side, Side>;
export type Contact = 'normally closed' | 'normally open' | 'unknown';
export type Sensor = 'contact' | 'npn' | 'pnp' | 'two-wire' | 'hall' | 'optical' | 'unknown';
export type Reach = 'by hand' | 'controller only' | 'never';
export type AxisLetter = 'X' | 'Y' | 'Z' | 'A' | 'B' | 'C' | 'U' | 'V' | 'W';

/** An input's name as the machine file and the stream spell it: lower-case letters, digits, hyphens. */
export type InputName = string;
/** What a verdict is about: `input`, `input/switch`, or `stream`. */
export type Subject = string;

/** One input of the controller: a terminal with one switch, or with several in series or in parallel. */
export interface Input {
  readonly name: InputName;
  readonly joined: 'single' | 'series' | 'parallel';
  readonly polarity: ActiveWhen;
  readonly terminal: string | undefined;
  /** Inputs of one connector drop together when it is pulled. */
  readonly connector: string | undefined;
  readonly switches: readonly [Switch, ...Switch[]];
}

/** One thing a person can press, with what the file says of it. */
export interface Switch {
  readonly subject: Subject;
  readonly input: InputName;
  /** Only where several switches share the input. */
  readonly name: string | undefined;
  readonly duty: readonly Duty[];
  readonly axis: AxisLetter | undefined;
  readonly end: End | undefined;
  readonly side: Side | undefined;
  readonly place: string | undefined;
  readonly contact: Contact;
  readonly sensor: Sensor;
  readonly circuit: DeclaredCircuit | undefined;
  readonly voltage: InputVoltage;
  readonly reach: Reach;
  readonly overtravel: Mm | undefined;
  readonly motor: number | undefined;
}

/** The input circuit as declared; values keep the text of the file. */
export interface DeclaredCircuit {
  readonly kind: CircuitKind;
  readonly supply: Volts | undefined;
  readonly values: Readonly<Partial<Record<CircuitValue, string>>>;
}

/** What may stand on the plug: decides whether a person may be asked to pull it. */
export type InputVoltage =
  | { readonly known: 'volts'; readonly volts: Volts; readonly from: 'voltage' | 'circuit' }
  | { readonly known: 'told-unknown' }
  | { readonly known: 'not-stated' };

/** Lengths in mm whatever the file's units; on a rotary axis the same fields are degrees, degrees/min, degrees/s². */
export interface Axis {
  readonly letter: AxisLetter;
  readonly kind: 'linear' | 'rotary';
  readonly motors: number;
  readonly travel: Mm | undefined;
  readonly homes: End | undefined;
  /** The side of the machine that the positive direction of the tool over the work points to. */
  readonly positive: Side | undefined;
  readonly moves: 'tool' | 'table' | undefined;
  readonly soft: readonly [Mm, Mm] | undefined;
  readonly hard: readonly [Mm, Mm] | undefined;
  readonly homeValue: Mm | undefined;
  readonly backOff: Mm | undefined;
  /** mm/min. */
  readonly approachSpeed: number | undefined;
  /** mm/min. */
  readonly rapid: number | undefined;
  /** mm/s². */
  readonly acceleration: number | undefined;
  /** ms from input to the start of braking. */
  readonly reaction: number | undefined;
  readonly step: Mm | undefined;
  readonly homeOrder: number | undefined;
}

export const allSwitches = (machine: Machine): readonly Switch[] =>
  machine.inputs.flatMap((input) => input.switches);

export const inputOf = (machine: Machine, name: InputName): Input | undefined =>
  machine.inputs.find((input) => input.name === name);

export const switchOf = (machine: Machine, subject: Subject): Switch | undefined =>
  allSwitches(machine).find((each) => each.subject === subject);

/**
 * Vertical axes drop when motor power goes. Where the file does not tell which way an axis points, Z, and W beside it (ISO 841), are taken as vertical, as on most
 * mills and routers (common practice, no source).
 */
export const verticalAxes = (machine: Machine): readonly AxisLetter[] =>
  machine.axes
    .filter(({ letter, kind, positive }) =>
      positive === undefined
        ? kind !== 'rotary' && (letter === 'Z' || letter === 'W')
        : positive === 'top' || positive === 'bottom',
    )
    .map(({ letter }) => letter);

/** The file shows that nothing hangs: it names the axes, and which way each linear one points, none of them up or down. */
export const hasNoVerticalAxis = (machine: Machine): boolean =>
  machine.axes.length > 0 &&
  verticalAxes(machine).length === 0 &&
  machine.axes.every(({ kind, positive }) => kind === 'rotary' || positive !== undefined);

import type { FaultName } from './fault-names.ts';
import type { Contact, Subject } from './machine.ts';
import type { Millis, Share, Volts } from './units.ts';
import type { Device, InputFamily, Joins, Stage, WiringName } from './wiring-names.ts';

/** What a wiring does under every fault, computed; nothing in it was measured on a machine. */
export interface WiringStudy {
  readonly wiring: WiringAsStudied;
  /** Whether a sound switch surely reads inactive at rest and active when pressed; if not, nothing else here means much. */
  readonly works: boolean;
  readonly states: readonly StateStudied[];
  readonly margins: MarginsStudied;
  readonly spread: readonly SpreadStudied[];
  readonly faults: readonly FaultStudied[];
  readonly coverage: { readonly fresh: Coverage; readonly worked: Coverage };
}

export interface WiringAsStudied {
  readonly name: WiringName;
  /** The input of a machine file, where it is one. */
  readonly input: string | undefined;
  readonly contact: Exclude<Contact, 'unknown'>;
  readonly contactAssumed: boolean;
  readonly joins: Joins;
  readonly device: Device;
  readonly stage: Stage;
  readonly joined: 'single' | 'series' | 'parallel';
  readonly family: InputFamily;
  /** In base units: V, ohm, F, A; infinite where the part is left out. */
  readonly values: readonly {
    readonly name: string;
    readonly nominal: number;
    readonly low: number;
    readonly high: number;
    readonly given: boolean;
  }[];
  /** Values of the machine file or command line that this wiring has no part for. */
  readonly unused: readonly string[];
}

export type StudiedState = 'rest' | 'pressed' | 'broken';
export type ReadLevel = 'conducting' | 'open' | 'uncertain' | 'floats' | 'shorted' | 'cut' | 'flickers';
export type ReadAs = 'active' | 'inactive' | 'uncertain' | 'unsteady';

/** A sound input in one state; `broken` is at rest with its signal core cut. */
export interface StateStudied {
  readonly state: StudiedState;
  readonly level: ReadLevel;
  readonly reported: ReadAs;
  /** Node by node; undefined where it floats. */
  readonly volts: readonly { readonly node: string; readonly volts: Volts | undefined }[];
  /** A through each part that carries current, and W in it. */
  readonly currents: readonly { readonly part: string; readonly amps: number; readonly watts: number }[];
  /** Whether the switching part conducts. */
  readonly closed: boolean;
}

export interface MarginsStudied {
  readonly atRest: Volts;
  readonly pressed: Volts;
  readonly wettingAmps: number;
  readonly highestContactOhms: number;
  readonly lowestLeakOhms: number;
  readonly shortestPulse: Millis;
  readonly longestIgnored: Millis;
}

/** What boards drawn from the tolerances read, and whether every corner of them reads alike; none is drawn where that settles it. */
export interface SpreadStudied {
  readonly state: StudiedState;
  readonly boards: number;
  readonly readings: readonly { readonly reported: ReadAs; readonly share: Share }[];
  readonly sureAtCorners: boolean;
}

/** When a fault is found without anyone looking for it, at the latest. */
export type FoundWhen = 'at once' | 'next press' | 'unplugging' | 'never';

export interface FaultStudied {
  readonly fault: FaultName;
  readonly rest: ReadAs;
  readonly pressed: ReadAs;
  readonly unplugged: ReadAs;
  readonly found: FoundWhen;
  /** The switch's trip is lost, now and then or always, or its duty is. */
  readonly dangerous: boolean;
  /** Shows on the input beside it when this switch is pressed. */
  readonly besides: boolean;
  readonly likelihood: { readonly fresh: number; readonly worked: number };
  readonly meter: MeterStudied | undefined;
  readonly beyond: 'power-stays-on' | 'trip-wanders' | 'one-bit-for-many' | undefined;
}

/** Where a meter is put to prove a fault, what it shows then and what it shows on a sound input. */
export interface MeterStudied {
  readonly quantity: 'volts' | 'ohms' | 'amps';
  readonly from: string;
  readonly to: string;
  readonly undone: 'at controller' | 'at switch' | 'both ends' | 'nothing';
  readonly pressed: boolean;
  readonly running: 'nothing' | 'drives' | 'spindle' | 'axis';
  readonly handling: 'left alone' | 'tugged' | 'cable flexed';
  readonly plugOut: boolean;
  readonly faulty: MeterShown;
  readonly sound: MeterShown;
}
export type MeterShown =
  | { readonly kind: 'value'; readonly least: number; readonly most: number }
  | { readonly kind: 'wanders' }
  | { readonly kind: 'over range' };

/** Weight of the dangerous faults, and how much of it is found and when: shares of the likelihood, not of their number. */
export interface Coverage {
  readonly dangerous: number;
  readonly atOnce: Share;
  readonly byPress: Share;
  readonly byUnplugging: Share;
}

/** Candidates side by side, best first. */
export interface WiringComparison {
  readonly candidates: readonly WiringStudy[];
  /** Dangerous faults that the best still misses at rest, most likely first. */
  readonly stillMissed: readonly FaultName[];
}

/** One wiring of a machine, with the switches that have it. */
export interface MachineWiring {
  readonly study: WiringStudy;
  readonly switches: readonly WiredSwitch[];
}

export interface WiredSwitch {
  readonly subject: Subject;
  /** Where the kind of contact comes from: unplugging found it, the file says so, or it is the usual one. */
  readonly contactFrom: 'found' | 'declared' | 'assumed';
}

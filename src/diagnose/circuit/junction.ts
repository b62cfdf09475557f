import { type Diode, thermalVolts } from './network.ts';

/** Leakage in parallel with every junction, S: keeps a reverse-biased one from being no element at all, as in SPICE. */
export const leastConductance = 1e-15;

/** A junction replaced by its tangent at `volts`: current = conductance * V + offset. */
export interface Tangent {
  readonly conductance: number;
  readonly offset: number;
}

export function tangentAt(diode: Diode, volts: number): Tangent {
  const scale = diode.ideality * thermalVolts;
  const grown = Math.exp(volts / scale);
  const conductance = (diode.saturation * grown) / scale + leastConductance;
  const amps = diode.saturation * (grown - 1) + leastConductance * volts;
  return { conductance, offset: amps - conductance * volts };
}

export const junctionAmps = (diode: Diode, volts: number): number =>
  diode.saturation * Math.expm1(volts / (diode.ideality * thermalVolts)) + leastConductance * volts;

/**
 * A step damped so that the exponential cannot run away: above the knee the current, not the voltage, is stepped
 * (L. W. Nagel, SPICE2, memorandum ERL-M520, 1975; from memory).
 */
export function damped(diode: Diode, wanted: number, before: number): number {
  const scale = diode.ideality * thermalVolts;
  const knee = scale * Math.log(scale / (Math.SQRT2 * diode.saturation));
  if (wanted <= knee || Math.abs(wanted - before) <= 2 * scale) return wanted;
  if (before <= 0) return scale * Math.log(wanted / scale);
  const grown = 1 + (wanted - before) / scale;
  return grown > 0 ? before + scale * Math.log(grown) : knee;
}

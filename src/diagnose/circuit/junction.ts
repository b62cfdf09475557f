import { type Diode, thermalVolts } from './network.ts';

/** Leakage in parallel with every junction, S: keeps a reverse-biased one from being no element at all, as in SPICE. */
const leastConductance = 1e-15;

const scaleOf = (diode: Diode): number => diode.ideality * thermalVolts;

export const junctionAmps = (diode: Diode, volts: number): number =>
  diode.saturation * Math.expm1(volts / scaleOf(diode)) + leastConductance * volts;

/** The slope of the current, S. */
export const junctionSlope = (diode: Diode, volts: number): number =>
  (diode.saturation * Math.exp(volts / scaleOf(diode))) / scaleOf(diode) + leastConductance;

/**
 * A step damped so that the exponential cannot run away: above the knee the current, not the voltage, is stepped
 * (L. W. Nagel, SPICE2, memorandum ERL-M520, 1975; from memory).
 */
export function damped(diode: Diode, wanted: number, before: number): number {
  const scale = scaleOf(diode);
  const knee = scale * Math.log(scale / (Math.SQRT2 * diode.saturation));
  if (wanted <= knee || Math.abs(wanted - before) <= 2 * scale) return wanted;
  if (before <= 0) return scale * Math.log(wanted / scale);
  const grown = 1 + (wanted - before) / scale;
  return grown > 0 ? before + scale * Math.log(grown) : knee;
}

import { type FaultName, faultNames, needsPortal } from './faults.ts';
import { portal, portalFile } from './portal.ts';
import { scenario, scenarioFile } from './scenario.ts';
import type { MachineTruth } from './truth.ts';

/** A simulated machine, and the file that its owner wrote of it. */
export interface BenchMachine {
  readonly truth: MachineTruth;
  readonly file: string;
}

const router: BenchMachine = { truth: scenario, file: scenarioFile };
const carver: BenchMachine = { truth: portal, file: portalFile };

/** The machine on which these faults can be planted: the usual router, or a portal where a beam of two motors or a turning axis is needed. */
export function machineFor(faults: readonly string[]): BenchMachine {
  const names = faults.map((spelled) => spelled.split(':')[0]?.trim());
  return faultNames.some((name: FaultName) => names.includes(name) && needsPortal(name)) ? carver : router;
}
